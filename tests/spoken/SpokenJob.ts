/**
 * A whole job to be spoken into the app: what is said, and what must stand at the end, written down by hand. After each
 * line the speaker is silent for as long as the app will answer, which the loop itself tells, so there is no idle gap.
 */
import { readdirSync, readFileSync } from "node:fs"
import { parse } from "yaml"
import { z } from "zod"
import { fliteVoices } from "../../src/cli/flite"
import { loadLoopTools } from "../../src/cli/loopTools"
import { RecordingScript } from "../../src/cli/makeRecording"
import { runLoop } from "../../src/dialogue/runLoop"
import { typedHeard } from "../../src/facts/typedHeard"

export const SpokenJob = z.strictObject({
  about: z.string(),
  place: z.string(),
  voice: z.enum(fliteVoices),
  says: z.array(z.string()).min(1),
  /** Each value that stands at the end, without how it was accepted. */
  record: z.array(z.string()),
  /** Reasons that warnings are kept for. */
  kept: z.array(z.string()),
  signed: z.boolean(),
})
export type SpokenJob = z.infer<typeof SpokenJob>

/** Jobs by the name of their file. */
export const readSpokenJobs = (): (readonly [name: string, job: SpokenJob])[] =>
  readdirSync("tests/spoken")
    .filter((file) => file.endsWith(".yaml"))
    .map((file) => [file.replace(".yaml", ""), SpokenJob.parse(parse(readFileSync(`tests/spoken/${file}`, "utf8")))])

/** Seconds that the ear's endpointer and the voice's start take, and those of a word of the built-in voice. */
const [turnSeconds, wordSeconds] = [3.5, 0.45]

/** Everything that the loop answers and writes when the lines are understood as they stand. */
export const runSpokenJob = ({ says, place }: SpokenJob) => {
  const tools = loadLoopTools("uk-bs7671")
  if (!tools.ok) throw new Error(tools.because)
  let count = 0
  const newId = () => `line-${++count}`
  const heards = says.map((text, index) => ({ ...typedHeard(`heard-${index}`, text, index * 60), engine: "offline" }))
  const start = { job: "spoken", place, pack: "uk-bs7671", device: "bench", startMs: 0 }
  return runLoop(heards, start, { ...tools.value, newId })
}

/** The recording's script, each pause as long as the app speaks in it. */
export const scriptOf = (job: SpokenJob): RecordingScript => {
  const answers: number[] = []
  for (const one of runSpokenJob(job).exchanges) {
    if ("heard" in one) answers.push(0)
    else if (answers.length > 0) answers.push(answers.pop()! + one.said.split(" ").length)
  }
  const lines = job.says.map((text, index) => ({ text, pause: turnSeconds + wordSeconds * (answers[index] ?? 0) }))
  return RecordingScript.parse({ voice: job.voice, lead: 1, lines })
}
