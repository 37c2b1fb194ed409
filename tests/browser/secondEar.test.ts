/**
 * The browser's own recogniser as a second ear, with a made-up one in its place: never made and nothing asked of anybody
 * else as the app comes; where it is chosen it is heard, named on the screen, and left with a notice once it fails for good.
 */
import type { BrowserContext, Page } from "playwright-core"
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest"
import { dropProfile, launch, makeProfile, type ServedApp, serveApp, storedLines } from "./openApp"

let app: ServedApp
let profile: string
let context: BrowserContext
let page: Page
beforeAll(async () => {
  app = await serveApp()
})
afterAll(() => app.close())
beforeEach(async () => {
  profile = makeProfile()
  context = await launch({ profile })
  page = context.pages()[0]!
})
afterEach(async () => {
  await context.close()
  dropProfile(profile)
})

interface Made {
  count: number
  /** The one that was started last. */
  last: { onresult(event: object): void; onerror(event: object): void } | null
}

/** A recogniser that does what the test tells it. */
const standIn = () =>
  page.addInitScript(() => {
    const made: Made = { count: 0, last: null }
    class Recogniser {
      onend = null
      constructor() {
        made.count += 1
      }
      start() {
        made.last = this as unknown as Made["last"]
      }
      stop() {}
      abort() {}
    }
    Object.assign(globalThis, { made, webkitSpeechRecognition: Recogniser, SpeechRecognition: undefined })
  })

const countMade = () => page.evaluate(() => (globalThis as unknown as { made: Made }).made.count)

const startJob = async () => {
  await page.getByLabel("Where is the job?").fill("The village hall")
  await page.getByRole("button", { name: "Start a job" }).click()
}
const foot = () => page.locator(".job-foot").getByText(/^Ear:/)

test("as it comes, the recogniser is never made and nobody but the page's own server is asked for anything", async () => {
  const asked: string[] = []
  context.on("request", (request) => asked.push(request.url()))
  await standIn()
  await page.goto(app.url)
  await startJob()
  const isListening = () => performance.getEntriesByName("bothhands.listening").length > 0
  await page.waitForFunction(isListening, null, { timeout: 90_000 })
  expect(await foot().textContent()).toContain("offline ear")
  expect(await countMade()).toBe(0)
  expect(asked.length).toBeGreaterThan(3)
  expect(asked.filter((url) => !url.startsWith(app.url) && !/^(blob|data):/.test(url))).toEqual([])
})

test("a browser without a recogniser says so in plain words, and cannot be set to it", async () => {
  await page.addInitScript(() => {
    Object.assign(globalThis, { webkitSpeechRecognition: undefined, SpeechRecognition: undefined })
  })
  await page.goto(`${app.url}#settings`)
  const choice = page.getByRole("radio", { name: /own recogniser Unless/ })
  await choice.waitFor()
  expect(await choice.isDisabled()).toBe(true)
  await page.getByText("This browser has none.").waitFor()
})

test("chosen, it is heard and named; failing for good, it hands over to the offline ear with a notice", async () => {
  await standIn()
  await page.goto(`${app.url}#settings`)
  await page.getByRole("radio", { name: /own recogniser Unless/ }).check()
  await page.goto(`${app.url}#jobs`)
  await startJob()
  await expect.poll(countMade, { timeout: 90_000 }).toBeGreaterThan(0)
  await expect.poll(() => foot().textContent()).toContain("may send the sound to its maker")
  const say = (text: string) =>
    page.evaluate((words) => {
      const { last } = (globalThis as unknown as { made: Made }).made
      last?.onresult({ results: [Object.assign([{ transcript: words, confidence: 0.9 }], { isFinal: true })] })
    }, text)
  const isHeard = async () => {
    // A recogniser that overlaps the app's own voice is thrown away with what it heard, so it is said again.
    await say("water ten square")
    return (await storedLines(page)).some((line) => line.type === "heard" && line.heard.engine === "browser")
  }
  await expect.poll(isHeard, { timeout: 60_000, interval: 3000 }).toBe(true)
  const isLeft = async () => {
    await page.evaluate(() => {
      const { last } = (globalThis as unknown as { made: Made }).made
      last?.onerror?.({ error: "network" })
    })
    return foot().textContent()
  }
  await expect.poll(isLeft, { timeout: 60_000, interval: 3000 }).toContain("offline ear")
  await page.goto(`${app.url}#settings`)
  await page.getByText("It failed here: This browser has no speech service.").first().waitFor()
})
