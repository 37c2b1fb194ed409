/**
 * What the page costs: the first download and the packs, compressed; a second start on a slow processor until it
 * listens; and the time from the end of a spoken sentence to the first sound of its read-back, in a real browser with the
 * sample recording as its microphone.
 */
import { readdirSync, readFileSync, statSync } from "node:fs"
import { join } from "node:path"
import { brotliCompressSync, gzipSync } from "node:zlib"
import type { CDPSession } from "playwright-core"
import { dropProfile, launch, makeProfile, serveApp, storedLines } from "../browser/openApp"
import { startFiles } from "./download"

const filesIn = (folder: string): string[] =>
  readdirSync(folder).flatMap((name) => {
    const path = join(folder, name)
    return statSync(path).isDirectory() ? filesIn(path) : [path]
  })

const kB = (bytes: number) => `${Math.round(bytes / 1000)} kB`

const printSize = (what: string, files: readonly string[]) => {
  const contents = files.map((file) => readFileSync(file))
  const sum = (sizeOf: (content: Buffer) => number) => contents.reduce((total, content) => total + sizeOf(content), 0)
  const raw = sum((content) => content.length)
  const gzip = sum((content) => gzipSync(content, { level: 9 }).length)
  const brotli = sum((content) => brotliCompressSync(content).length)
  console.log(`${what}: ${files.length} files, ${kB(raw)} raw, ${kB(gzip)} gzip, ${kB(brotli)} brotli`)
}

const quantile = (sorted: readonly number[], share: number) =>
  sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))]!

/** Seconds of the recording that are listened to. */
const listenSeconds = 100

const measureAnswers = async () => {
  const app = await serveApp()
  const profile = makeProfile()
  const context = await launch({ profile, recording: "samples/bakery.wav" })
  try {
    const page = context.pages()[0]!
    await page.goto(app.url)
    await page.getByLabel("Where is the job?").fill("The bakery")
    await page.getByRole("button", { name: "Start a job" }).click()
    await page.waitForFunction(() => performance.getEntriesByName("bothhands.listening").length > 0, null, {
      timeout: 60_000,
    })
    await page.waitForTimeout(listenSeconds * 1000)
    const lines = await storedLines(page)
    const marks = await page.evaluate(() =>
      ["bothhands.listening", "bothhands.sound", "bothhands.say"].map((name) =>
        performance.getEntriesByName(name).map((mark) => mark.startTime),
      ),
    )
    const [[zero = 0] = [], sounds = [], says = []] = marks
    const delays = lines.flatMap((line) => {
      if (line.type !== "heard") return []
      const ended = zero + line.heard.end * 1000
      const first = (times: number[]) => times.find((time) => time >= ended)
      const sound = Math.min(first(sounds) ?? Infinity, first(says) ?? Infinity)
      return Number.isFinite(sound) ? [{ sound: sound - ended, words: (first(says) ?? sound) - ended }] : []
    })
    for (const what of ["sound", "words"] as const) {
      const sorted = delays.map((one) => one[what]).sort((a, b) => a - b)
      if (sorted.length === 0) continue
      const [p50, p95] = [quantile(sorted, 0.5), quantile(sorted, 0.95)].map(Math.round)
      console.log(
        `end of speech to first ${what} of the answer: median ${p50} ms, p95 ${p95} ms, ${sorted.length} sentences`,
      )
    }
  } finally {
    await context.close()
    await app.close()
    dropProfile(profile)
  }
}

/**
 * How much slower than this machine the processor of a modest phone is taken to be (common practice, no source). The
 * browser slows the page by it and no worker, so the ear's own loading, which runs beside the page, is at full speed.
 */
const slowdown = 4

/** Starts that are measured; the first one fills the browser's stores and is not. */
const starts = 3

/** Asks the page again and again until it answers with something. Playwright's own waiting is work for a slow page. */
const askUntil = async <T>(devtools: CDPSession, expression: string): Promise<T> => {
  for (const deadline = Date.now() + 60_000; Date.now() < deadline; ) {
    const { result } = await devtools.send("Runtime.evaluate", { expression, returnByValue: true })
    if (result.value) return result.value as T
    await new Promise((fulfil) => setTimeout(fulfil, 25))
  }
  throw new Error(`The page never answered: ${expression}`)
}

/** Where the button is that starts the ear, and since when, in the page's own milliseconds. */
const listenButton = `(() => {
  const button = [...document.querySelectorAll("button")].find((one) => one.textContent.trim() === "Listen")
  const place = button?.getBoundingClientRect()
  return place && { at: performance.now(), x: place.x + place.width / 2, y: place.y + place.height / 2 }
})()`
const listeningAt = `performance.getEntriesByName("bothhands.listening")[0]?.startTime`

/** Taps the ear on as soon as it can be; gives the milliseconds from the start of the page to that and to its listening. */
const startListening = async (devtools: CDPSession) => {
  const { at, x, y } = await askUntil<{ at: number; x: number; y: number }>(devtools, listenButton)
  for (const type of ["mousePressed", "mouseReleased"] as const)
    await devtools.send("Input.dispatchMouseEvent", { type, x, y, button: "left", clickCount: 1 })
  return { screen: Math.round(at), listening: Math.round(await askUntil<number>(devtools, listeningAt)) }
}

/** Second starts with a job in hand and a slowed processor: until its screen can be used, and until the ear listens. */
const measureStarts = async () => {
  const app = await serveApp()
  const profile = makeProfile()
  const context = await launch({ profile })
  try {
    const page = context.pages()[0]!
    await page.goto(app.url)
    await page.getByLabel("Where is the job?").fill("The bakery")
    await page.getByRole("button", { name: "Start a job" }).click()
    const isListening = () => performance.getEntriesByName("bothhands.listening").length > 0
    await page.waitForFunction(isListening, null, { timeout: 180_000 })
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null, null, { timeout: 60_000 })
    const devtools = await context.newCDPSession(page)
    await devtools.send("Emulation.setCPUThrottlingRate", { rate: slowdown })
    for (let start = 0; start < starts; start++) {
      await page.goto("about:blank")
      await page.goto(app.url, { waitUntil: "commit" })
      const { screen, listening } = await startListening(devtools)
      console.log(
        `second start, processor slowed ${slowdown} times: job on the screen ${screen} ms, listening ${listening} ms`,
      )
    }
  } finally {
    await context.close()
    await app.close()
    dropProfile(profile)
  }
}

export const run = async (): Promise<void> => {
  const files = filesIn("dist")
  const inFolder = (folder: string) => files.filter((file) => file.startsWith(join("dist", folder)))
  const { first, rest } = startFiles()
  const inDist = (paths: readonly string[]) => paths.map((path) => join("dist", path))
  printSize("start page", inDist(first))
  printSize("what comes once it is drawn, or when it is wanted", inDist(rest))
  printSize("ear pack with its engine", [
    ...inFolder("ear"),
    ...files.filter((file) => /earWorker|microphoneWorklet|\.wasm$/.test(file)),
  ])
  printSize("fallback voice, only where the browser has none", inFolder("voice"))
  await measureStarts()
  await measureAnswers()
}
