/**
 * An hour of dictated talk into a job: the processor time it takes, undamaged and with one word in twenty damaged, and
 * what became of the sentences by the kind of damage. SEEDS says how many damaged hours are counted (5).
 */
import { readTranscript } from "../../src/speech/readTranscript"
import { damageKinds, damageLines } from "../transcripts/damageWords"
import { damageOf, outcomes, playHour, scoreHour } from "../transcripts/scoreHour"
import { asVtt, wholeHour } from "../transcripts/wholeHour"

const cpuMs = () => {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1000
}

/** Reading the file and the whole loop, of one core; the first time words and rules are met for the first time too. */
const measure = async (name: string, texts: readonly string[]): Promise<void> => {
  const vtt = asVtt(texts)
  const started = cpuMs()
  const read = await readTranscript(vtt, "vtt", () => {})
  if (!read.ok) throw new Error(read.because)
  const lines = playHour(read.value.map((heard) => heard.text))
  const entries = lines.filter((line) => line.type === "entry").length
  console.log(
    `${name}: ${read.value.length} sentences, ${entries} entries, ${Math.round(cpuMs() - started)} ms of one core`,
  )
}

export const run = async (): Promise<void> => {
  const texts = wholeHour()
  playHour(["water ten square"])
  await measure("60 minutes of text, first time", texts)
  await measure("60 minutes of text, again", texts)
  await measure(
    "one word in twenty damaged",
    damageLines(texts, 0.05, 1).map((one) => one.text),
  )
  const seeds = Number(process.env.SEEDS ?? 5)
  const scored = Array.from({ length: seeds }, (_, at) => scoreHour(at + 1)).flat()
  console.log(`sentences of ${seeds} damaged hours, by what was damaged in them:`)
  console.log(`${"".padEnd(12)}${outcomes.map((one) => one.padStart(8)).join("")}`)
  for (const kind of ["none", ...damageKinds, "several"] as const) {
    const own = scored.filter((one) => damageOf(one.damaged) === kind)
    const counts = outcomes.map((outcome) => own.filter((one) => one.outcome === outcome).length)
    console.log(`${kind.padEnd(12)}${counts.map((count) => String(count).padStart(8)).join("")}`)
  }
  const wrong = scored.filter((one) => ["caught", "unseen", "silent"].includes(one.outcome))
  const number = wrong.filter((one) => one.damaged.kinds.includes("number"))
  const caught = (some: typeof wrong) => `${some.filter((one) => one.outcome === "caught").length} of ${some.length}`
  console.log(`wrong values with a question, a finding or a doubt of their own: ${caught(wrong)}`)
  console.log(`the same where a number word became another: ${caught(number)}; the rest only wait for a yes`)
}
