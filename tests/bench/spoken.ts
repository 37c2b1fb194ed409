/**
 * Whole jobs spoken into the built app in real time, by a worker who listens: what of each record stands as it was said,
 * what is missing, and what is there that nobody said. `npm run bench -- spoken [NAME …]`; needs a build in `dist`.
 * TRACE=1 prints what was heard and said as well.
 */
import { readFileSync } from "node:fs"
import type { Page } from "playwright-core"
import { makeRecording } from "../../src/cli/makeRecording"
import { readVoiceWords } from "../../src/cli/readVoiceWords"
import type { LogLine } from "../../src/record/LogLine"
import { dropProfile, launch, makeProfile, serveApp, storedLines } from "../browser/openApp"
import { heardIn, recordOf } from "../recordOf"
import { AttentiveWorker, type Site } from "../spoken/AttentiveWorker"
import { giveMicrophone, speakInto } from "../spoken/PageMicrophone"
import { linesOf, readSpokenJobs, type SpokenJob } from "../spoken/SpokenJob"

/** How long the worker waits for an answer, and how long the app has to be silent before he speaks. */
const [patienceMs, silenceMs] = [4000, 900]

/** Looks at what the page shows of its ear: it says when it talks. */
const answeredOn = async (page: Page): Promise<void> => {
  const isTalking = () => page.locator(".ear-deaf, .ear-speech").count()
  let hasTalked = false
  for (let silent = 0, waited = 0; silent < silenceMs || (!hasTalked && waited < patienceMs); waited += 100) {
    await page.waitForTimeout(100)
    const talks = (await page.locator(".ear-deaf").count()) > 0
    hasTalked ||= talks
    silent = (await isTalking()) > 0 ? 0 : silent + 100
  }
}

const siteOn = (page: Page, { voice }: SpokenJob): Site => {
  const words = readVoiceWords(readFileSync("grammars/en-GB/voiceWords.txt", "utf8"))
  return {
    speak: async (text) => {
      const { samples, rateHz } = await makeRecording({ voice, lead: 0.1, lines: [lineOf(text)] }, words)
      await speakInto(page, samples, rateHz)
    },
    answered: () => answeredOn(page),
    lines: () => storedLines(page),
  }
}
const lineOf = (text: string) => ({ text, pause: 0.3, chatter: false, gainDb: 0 })

interface Spoken {
  lines: LogLine[]
  turns: number
  seconds: number
}

const speakJob = async (job: SpokenJob): Promise<Spoken> => {
  const app = await serveApp()
  const profile = makeProfile()
  const context = await launch({ profile })
  try {
    const page = context.pages()[0]!
    await giveMicrophone(page)
    await page.goto(app.url)
    await page.getByLabel("Where is the job?").fill(job.place)
    await page.getByRole("button", { name: "Start a job" }).click()
    const isListening = () => performance.getEntriesByName("bothhands.listening").length > 0
    await page.waitForFunction(isListening, null, { timeout: 120_000 })
    const started = performance.now()
    const worker = new AttentiveWorker(siteOn(page, job))
    await answeredOn(page)
    for (const line of linesOf(job)) await worker.say(line)
    const seconds = Math.round((performance.now() - started) / 1000)
    return { lines: await storedLines(page), turns: worker.turns, seconds }
  } finally {
    await context.close()
    await app.close()
    dropProfile(profile)
  }
}

const compare = (name: string, job: SpokenJob, { lines, turns, seconds }: Spoken) => {
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
  console.log(`  signed: ${signed} (wanted: ${job.signed})`)
  console.log(`  spoke ${turns} times for ${job.says.length} lines, heard ${heardIn(lines).length} times, ${seconds} s`)
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
  for (const [name, job] of readSpokenJobs()) {
    if (only.length > 0 && !only.includes(name)) continue
    const spoken = await speakJob(job)
    if (process.env.TRACE) printTalk(spoken.lines)
    compare(name, job, spoken)
  }
}
