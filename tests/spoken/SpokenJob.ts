/** A whole job to be spoken into the app: what is said, and what must stand at the end, written down by hand. */
import { readdirSync, readFileSync } from "node:fs"
import { parse } from "yaml"
import { z } from "zod"
import { fliteVoices } from "../../src/cli/flite"
import { loadLoopTools } from "../../src/cli/loopTools"
import { showFact } from "../../src/cli/showFact"
import { runLoop } from "../../src/dialogue/runLoop"
import { typedHeard } from "../../src/facts/typedHeard"
import type { Line } from "./AttentiveWorker"

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

/** Each line with the values that it means, as the loop writes them when every word is understood. */
export const linesOf = (job: SpokenJob): Line[] => {
  const { lines } = runSpokenJob(job)
  return job.says.map((text, index) => ({
    text,
    means: lines.flatMap((line) =>
      line.type === "entry" && line.origin.by === "voice" && line.origin.heard.at(-1) === `heard-${index}`
        ? [showFact(line.fact)]
        : [],
    ),
  }))
}
