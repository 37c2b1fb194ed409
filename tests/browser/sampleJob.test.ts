/**
 * The sample job spoken into the built app: Chromium's microphone plays the recording, the network is cut once the page
 * is ready, and the record, both warnings, the chatter and what survives the browser's death are looked at.
 */
import { readFileSync } from "node:fs"
import { afterAll, beforeAll, expect, test } from "vitest"
import type { LogLine } from "../../src/record/LogLine"
import { bakeryChatter, bakeryRecord, bakeryWarnings } from "../bakery"
import { heardIn, recordOf, saidIn } from "../recordOf"
import { dropProfile, launch, makeProfile, type ServedApp, serveApp, storedLines } from "./openApp"

const recordingSeconds = (wav: string) => readFileSync(wav).length / 2 / 16_000

let app: ServedApp
beforeAll(async () => {
  app = await serveApp()
})
afterAll(() => app.close())

/** Without how each was accepted: an ear that is less sure of itself asks for a yes more often. */
const valuesOf = (record: readonly string[]) => record.map((line) => line.replace(/, \w+$/, "")).sort()

test("the spoken job builds itself, offline, value by value, with both warnings aloud and nothing from the chatter", async () => {
  const profile = makeProfile()
  const context = await launch({ profile, recording: "samples/bakery.wav" })
  const page = context.pages()[0]!
  const asked: string[] = []
  try {
    await page.goto(app.url)
    await page.getByLabel("Where is the job?").fill("The bakery with the flat above")
    await page.getByRole("button", { name: "Start a job" }).click()
    // Once the ear is open everything it needs is there, and the network goes.
    const isListening = () => performance.getEntriesByName("bothhands.listening").length > 0
    await page.waitForFunction(isListening, null, { timeout: 60_000 })
    await context.setOffline(true)
    page.on("request", (request) => {
      if (!request.url().startsWith("blob:")) asked.push(request.url())
    })
    const deadline = Date.now() + (recordingSeconds("samples/bakery.wav") + 20) * 1000
    let lines: LogLine[] = []
    while (Date.now() < deadline) {
      await page.waitForTimeout(2000)
      lines = await storedLines(page)
      if (lines.some((line) => line.type === "heard" && line.heard.text === "what's left")) break
    }
    await page.waitForTimeout(1000)
    lines = await storedLines(page)
    expect(valuesOf(recordOf(lines))).toEqual(valuesOf(bakeryRecord))
    const confirmed = (record: readonly string[]) =>
      record.filter((line) => / resistance .*said_yes$/.test(line)).sort()
    expect(confirmed(recordOf(lines))).toEqual(confirmed(bakeryRecord))
    const warnings = saidIn(lines).filter((words) => words.startsWith("Warning."))
    expect(warnings.map((words, index) => words.slice(0, bakeryWarnings[index]?.length))).toEqual(bakeryWarnings)
    expect(heardIn(lines).filter((words) => bakeryChatter.test(words))).toEqual([])
    expect(asked).toEqual([])
  } finally {
    await context.close()
    dropProfile(profile)
  }
})
