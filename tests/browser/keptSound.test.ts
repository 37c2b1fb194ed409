/**
 * Sound kept with its words in a real browser: spoken into the microphone, kept as Opus, decoded by an outside decoder,
 * played at the desk, silenced where words are struck, and deleted.
 */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { OggOpusDecoder } from "ogg-opus-decoder"
import type { BrowserContext, Page } from "playwright-core"
import { afterAll, beforeAll, expect, test } from "vitest"
import { makeRecording } from "../../src/cli/makeRecording"
import type { Clip } from "../../src/record/Clip"
import { dropProfile, launch, makeProfile, type ServedApp, serveApp, storedLines } from "./openApp"

/** Said over and over: on a busy machine the first may fall into the app's own words, to which the ear is deaf. */
const said = "water ten square"
const lines = [
  { text: "lovely day", voice: "kal16" as const, chatter: true, gainDb: 0, pause: 3 },
  ...Array.from({ length: 8 }, () => ({ text: said, chatter: false, gainDb: 0, pause: 9 })),
]

let app: ServedApp
let folder: string
let recording: string
beforeAll(async () => {
  app = await serveApp()
  folder = mkdtempSync(join(tmpdir(), "bothhands-sound-"))
  recording = join(folder, "said.wav")
  const script = { voice: "slt" as const, lead: 8, lines }
  writeFileSync(recording, (await makeRecording(script)).wav)
})
afterAll(async () => {
  await app.close()
  rmSync(folder, { recursive: true })
})

/** Every clip in the page's own database, with its sound. */
const storedClips = (page: Page): Promise<Clip[]> =>
  page.evaluate(
    () =>
      new Promise<Clip[]>((fulfil, fail) => {
        const opening = indexedDB.open("bothhands")
        opening.onerror = () => fail(opening.error)
        opening.onsuccess = () => {
          const tables = opening.result.transaction(["clips", "sounds"])
          const [notes, sounds] = [tables.objectStore("clips").getAll(), tables.objectStore("sounds").getAll()]
          tables.oncomplete = () => {
            opening.result.close()
            fulfil(notes.result.map((note, at) => ({ ...note, sound: [...sounds.result[at].sound] })))
          }
        }
      }),
  )

/** The clip's samples by an outside decoder: libopus, built for WebAssembly by others. */
const decode = async (clip: Clip) => {
  const decoder = new OggOpusDecoder()
  await decoder.ready
  const { channelData, samplesDecoded, sampleRate, errors } = await decoder.decodeFile(Uint8Array.from(clip.sound))
  decoder.free()
  expect(errors).toEqual([])
  return { samples: channelData[0]!, seconds: samplesDecoded / sampleRate, rateHz: sampleRate }
}
const peak = (samples: Float32Array) => samples.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0)

const keepSound = async (page: Page) => {
  await page.goto(`${app.url}#settings`)
  await page.getByLabel("Keep the sound of what goes on record").check()
  await page.goto(`${app.url}#jobs`)
}

const sayJob = async (context: BrowserContext) => {
  const page = context.pages()[0]!
  await keepSound(page)
  await page.getByLabel("Where is the job?").fill("The village hall")
  await page.getByRole("button", { name: "Start a job" }).click()
  await expect.poll(async () => (await storedClips(page)).length, { timeout: 100_000 }).toBeGreaterThanOrEqual(1)
  // The ear is put away with the page, so that nothing comes in while what is stored is looked at.
  await page.goto("about:blank")
  await page.goto(`${app.url}#office`)
  return page
}

interface Played {
  offset: number
  seconds: number
  length: number
  peak: number
}

/** Plays the words that the size rests on, and looks at what reached the sound graph. */
const playAtDesk = async (page: Page, clips: readonly Clip[]) => {
  const { job } = (await storedLines(page))[0]!
  await page.addInitScript(() => {
    const played: Played[] = []
    Object.assign(globalThis, { played })
    const start = AudioBufferSourceNode.prototype.start
    AudioBufferSourceNode.prototype.start = function (when = 0, offset = 0, seconds = 0) {
      const samples = this.buffer!.getChannelData(0)
      const loudest = samples.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0)
      played.push({ offset, seconds, length: this.buffer!.duration, peak: loudest })
      start.call(this, when, offset, seconds)
    }
  })
  await page.goto("about:blank")
  await page.goto(`${app.url}#office/${job}`)
  await page.getByRole("button", { name: /^Water, size/ }).click()
  await page.getByRole("button", { name: "Play the lit words" }).click()
  const first = () => page.evaluate(() => (globalThis as unknown as { played: Played[] }).played[0])
  await expect.poll(first).toBeTruthy()
  const { offset, seconds, length, peak: loudest } = (await first())!
  const clip = clips[0]!
  const words = (await storedLines(page)).flatMap((line) =>
    line.type === "heard" && line.heard.id === clip.heard ? line.heard.words : [],
  )
  // The size rests on the part's name as well.
  const [water, square] = ["water", "square"].map((text) => words.find((word) => word.text === text)!)
  expect(Math.abs(length - clip.seconds)).toBeLessThan(0.05)
  expect(Math.abs(offset - (water!.start - clip.from - 0.15))).toBeLessThan(0.02)
  expect(seconds).toBeGreaterThanOrEqual(square!.end - water!.start)
  expect(loudest).toBeGreaterThan(0.03)
}

const strikeAtDesk = async (page: Page) => {
  await page.keyboard.press("x")
  await page.getByLabel("To", { exact: true }).selectOption({ index: 2 })
  await page.getByLabel("Why").fill("a private matter")
  await page.keyboard.press("Enter")
  await page.getByText("A stretch of this sound was silenced for good.").waitFor()
  const struck = (await storedClips(page)).find((clip) => clip.silenced.length > 0)!
  const left = await decode(struck)
  expect(peak(left.samples)).toBeLessThan(0.003)
  expect(Math.abs(left.seconds - struck.seconds)).toBeLessThan(0.05)
}

const deleteAll = async (page: Page) => {
  await page.goto(app.url)
  // The job is in hand, so the page comes back to it; its settings are those of the start page.
  await page.goto(`${app.url}#settings`)
  await page.getByRole("button", { name: "Delete all sound now" }).click()
  await page.getByRole("button", { name: "Yes, delete the sound" }).click()
  await page.getByText("All kept sound is deleted.").waitFor()
  expect(await storedClips(page)).toEqual([])
  expect((await storedLines(page)).length).toBeGreaterThan(3)
}

test("spoken words are kept as sound of their own length; it is played, silenced and deleted where one says so", async () => {
  const profile = makeProfile()
  const context = await launch({ profile, recording, viewport: { width: 1440, height: 900 } })
  try {
    const page = await sayJob(context)
    const clips = await storedClips(page)
    const heard = (await storedLines(page)).flatMap((line) => (line.type === "heard" ? [line.heard] : []))
    expect([...new Set(heard.map((one) => one.text))]).toEqual([said])
    for (const clip of clips) {
      const words = heard.find((one) => one.id === clip.heard)!
      expect(clip.type).toBe("audio/ogg; codecs=opus")
      expect(clip.from).toBeLessThanOrEqual(words.start)
      expect(clip.from + clip.seconds).toBeGreaterThanOrEqual(words.end)
      const sound = await decode(clip)
      expect(Math.abs(sound.seconds - clip.seconds)).toBeLessThan(0.05)
      expect(peak(sound.samples)).toBeGreaterThan(0.03)
    }
    await playAtDesk(page, clips)
    await strikeAtDesk(page)
    await deleteAll(page)
  } finally {
    await context.close()
    dropProfile(profile)
  }
})
