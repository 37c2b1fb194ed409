/**
 * Whole jobs spoken into the built app through Chromium's microphone, in real time: what of each record stands as it was
 * said, what is missing, and what is there that nobody said. `npm run bench -- spoken [NAME …]`; needs a build in `dist`.
 * TRACE=1 prints what was heard and said as well.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { makeRecording } from "../../src/cli/makeRecording"
import { readVoiceWords } from "../../src/cli/readVoiceWords"
import type { LogLine } from "../../src/record/LogLine"
import { dropProfile, launch, makeProfile, serveApp, storedLines } from "../browser/openApp"
import { heardIn, recordOf } from "../recordOf"
import { readSpokenJobs, type SpokenJob, scriptOf } from "../spoken/SpokenJob"

/** After the last word: the app's last answer. */
const endSeconds = 15

const speak = async (job: SpokenJob, wav: string, seconds: number): Promise<LogLine[]> => {
  const app = await serveApp()
  const profile = makeProfile()
  const context = await launch({ profile, recording: wav })
  try {
    const page = context.pages()[0]!
    await page.goto(app.url)
    await page.getByLabel("Where is the job?").fill(job.place)
    await page.getByRole("button", { name: "Start a job" }).click()
    const isListening = () => performance.getEntriesByName("bothhands.listening").length > 0
    await page.waitForFunction(isListening, null, { timeout: 120_000 })
    await page.waitForTimeout((seconds + endSeconds) * 1000)
    return await storedLines(page)
  } finally {
    await context.close()
    await app.close()
    dropProfile(profile)
  }
}

const compare = (name: string, job: SpokenJob, lines: readonly LogLine[]) => {
  const found = recordOf(lines).map((line) => line.replace(/, \w+$/, ""))
  const missing = job.record.filter((line) => !found.includes(line))
  const foreign = found.filter((line) => !job.record.includes(line))
  const kept = lines.flatMap((line) => (line.type === "kept" ? [line.reason] : []))
  const signed = lines.some((line) => line.type === "signed_off")
  const right = job.record.length - missing.length
  console.log(`${name}: ${right} of ${job.record.length} values as they were said, ${foreign.length} that nobody said`)
  for (const line of missing) console.log(`  missing: ${line}`)
  for (const line of foreign) console.log(`  nobody said: ${line}`)
  console.log(`  kept for: ${kept.join("; ") || "nothing"} (wanted: ${job.kept.join("; ") || "nothing"})`)
  console.log(`  signed: ${signed} (wanted: ${job.signed}); ${heardIn(lines).length} of ${job.says.length} lines heard`)
}

/** Both sides of the talk with their seconds, and how sure the ear was. */
const printTalk = (lines: readonly LogLine[]) => {
  const start = Date.parse(lines[0]!.at)
  for (const line of lines) {
    const second = ((Date.parse(line.at) - start) / 1000).toFixed(1).padStart(7)
    if (line.type === "heard") console.log(`${second}   ${line.heard.text} (${line.heard.margin?.toFixed(2)})`)
    if (line.type === "said") console.log(`${second}     ${line.words}`)
  }
}

export const run = async (only: readonly string[] = []): Promise<void> => {
  const words = readVoiceWords(readFileSync("grammars/en-GB/voiceWords.txt", "utf8"))
  const folder = mkdtempSync(join(tmpdir(), "bothhands-spoken-"))
  try {
    for (const [name, job] of readSpokenJobs()) {
      if (only.length > 0 && !only.includes(name)) continue
      const { wav, samples, rateHz } = await makeRecording(scriptOf(job), words)
      const file = join(folder, `${name}.wav`)
      writeFileSync(file, wav)
      const seconds = samples.length / rateHz
      console.log(`${name}: ${job.says.length} lines, ${Math.round(seconds)} s`)
      const lines = await speak(job, file, seconds)
      if (process.env.TRACE) printTalk(lines)
      compare(name, job, lines)
    }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
