/**
 * The built-in voice in a real browser that has no voice of its own: fetched from the page's own server, loud enough at
 * the loudspeaker, as long as the sentence, and silent at once when it is hushed.
 */
import { resolve } from "node:path"
import { type Browser, chromium, type Page } from "playwright-core"
import { createServer, type ViteDevServer } from "vite"
import { afterAll, beforeAll, expect, test } from "vitest"
import type { Outcome } from "../../src/facts/Outcome"
import type { VoiceChoice } from "../../src/speech/chooseVoice"
import type { ChosenSpeaker } from "../../src/speech/createSpeaker"
import { findBrowser } from "./findBrowser"

let server: ViteDevServer
let browser: Browser
let page: Page

beforeAll(async () => {
  const settings = { configFile: resolve("vite.config.ts"), logLevel: "error" } as const
  server = await createServer({ ...settings, server: { port: 0, hmr: false } })
  await server.listen()
  browser = await chromium.launch({ executablePath: findBrowser(), headless: true, args: ["--no-sandbox"] })
  page = await browser.newPage()
  const module = `import { chooseVoice } from "/@fs${resolve("src/speech/chooseVoice.ts")}"; Object.assign(globalThis, { chooseVoice })`
  const body = `<button>Tap</button><script type="module">${module}</script>`
  await page.route("**/blank", (route) => route.fulfill({ contentType: "text/html", body }))
  await page.goto(`${server.resolvedUrls?.local[0]}blank`)
  await page.waitForFunction(() => "chooseVoice" in globalThis)
})
afterAll(async () => {
  await browser?.close()
  await server?.close()
})

/** What the page keeps between two calls. */
interface Bench {
  chooseVoice(choice: VoiceChoice): ChosenSpeaker
  speaker: ChosenSpeaker
  /** Loudest sample that reached the loudspeaker. */
  peak: number
  tapped: Promise<{ prepared: Outcome; name: string | null; outcome: Outcome; seconds: number; hushedMs: number }>
}

test("speaks after the tap and not before", async () => {
  await page.evaluate(() => {
    Reflect.deleteProperty(globalThis, "speechSynthesis")
    const bench = globalThis as unknown as Bench
    bench.peak = 0
    const connect = AudioNode.prototype.connect as (this: AudioNode, to: AudioNode) => AudioNode
    AudioNode.prototype.connect = function (this: AudioNode, to: AudioNode) {
      if (to === this.context.destination) {
        const meter = this.context.createAnalyser()
        const samples = new Float32Array(meter.fftSize)
        connect.call(this, meter)
        setInterval(() => {
          meter.getFloatTimeDomainData(samples)
          bench.peak = samples.reduce((most, sample) => Math.max(most, Math.abs(sample)), bench.peak)
        }, 20)
      }
      return connect.call(this, to)
    } as typeof AudioNode.prototype.connect
    bench.speaker = bench.chooseVoice({ packFolder: "/voice/" })
    document.querySelector("button")!.onclick = () => {
      const { speaker } = bench
      const run = async () => {
        const prepared = await speaker.prepare()
        const from = performance.now()
        const outcome = await speaker.say("Water. Ten square. Nought point nought five ohms.")
        const seconds = (performance.now() - from) / 1000
        const hushed = speaker.say("If you smell gas, stop and get out.")
        await new Promise((wait) => setTimeout(wait, 400))
        const cut = performance.now()
        speaker.hush()
        await hushed
        return { prepared, name: speaker.voiceName(), outcome, seconds, hushedMs: performance.now() - cut }
      }
      bench.tapped = run()
    }
  })
  const before = await page.evaluate(() => (globalThis as unknown as Bench).speaker.say("water"))
  expect(before).toEqual({ ok: false, because: expect.stringMatching(/tap/) })

  await page.click("button")
  const after = await page.evaluate(() => (globalThis as unknown as Bench).tapped)
  expect(after.prepared.ok).toBe(true)
  expect(after.name).toBe("built-in voice")
  expect(after.outcome.ok).toBe(true)
  // Eight words at two to five a second.
  expect(after.seconds).toBeGreaterThan(1.6)
  expect(after.seconds).toBeLessThan(5.5)
  expect(after.hushedMs).toBeLessThan(200)
  expect(await page.evaluate(() => (globalThis as unknown as Bench).peak)).toBeGreaterThan(0.2)
})
