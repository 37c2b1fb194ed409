/** Which sound is kept, how long, and what is silenced; the clips lie in a real database of the test's own. */
import "fake-indexeddb/auto"
import { beforeEach, expect, test, vi } from "vitest"
import { createDeskSound } from "../../../src/app/office/deskSound"
import { keepRecorded } from "../../../src/app/office/takeIn/keepRecorded"
import { wipeStretch } from "../../../src/app/office/wipeStretch"
import { DroppedSound } from "../../../src/app/sound/DroppedSound"
import { keepForChoices, pastKeeping } from "../../../src/app/sound/keepFor"
import { noRoom, SoundKeeper } from "../../../src/app/sound/SoundKeeper"
import { createSoundShelf } from "../../../src/app/sound/SoundShelf"
import { tidySound } from "../../../src/app/sound/tidySound"
import { done, refuse } from "../../../src/facts/Outcome"
import type { ClipNote, ClipStore } from "../../../src/record/Clip"
import { createIndexedDbClips } from "../../../src/record/indexedDbClips"
import { createMemoryStore } from "../../../src/record/memoryStore"
import { encodeClip } from "../../../src/speech/encodeClip"
import { readWav } from "../../../src/speech/readWav"
import { opened, stampLines } from "../../record/someLines"
import { rateHz, silence, word } from "../../speech/madeUpSound"

let count = 0
let clips: ClipStore
beforeEach(() => {
  clips = createIndexedDbClips(`kept-${++count}`)
})

const heardLine = (id: string) => ({
  type: "heard" as const,
  heard: { id, text: "yes", alternatives: [], words: [], start: 5, end: 6, engine: "offline", margin: 1 },
})
const sound = (seconds = 1) => ({ samples: word(seconds), rateHz, from: 4.75 })
const plainEncode = (samples: Float32Array, hz: number) => encodeClip(samples, hz, false)

const makeKeeper = (given: { isOn?: boolean; free?: number | null } = {}) => {
  const { isOn = true, free = null } = given
  const dropped = new DroppedSound()
  const troubles: string[] = []
  const keeper = new SoundKeeper({
    clips,
    dropped,
    isOn: () => isOn,
    encode: plainEncode,
    free: async () => free,
    now: () => "2026-03-02T10:00:00+01:00",
  })
  keeper.watch((because) => troubles.push(because))
  return { keeper, troubles, dropped }
}
const keptIds = async () => (await clips.notes()).map((note) => note.heard)

test("the sound of an utterance that became a line is kept, whole and with its place", async () => {
  const { keeper, troubles } = makeKeeper()
  keeper.hear("h1", sound(1.5))
  keeper.keep(stampLines([opened, heardLine("h1")]))
  await keeper.settled()
  const clip = (await clips.read({ job: "bakery", heard: "h1" }))!
  expect(clip).toMatchObject({ from: 4.75, seconds: 1.5, type: "audio/wav", at: "2026-03-02T09:00:00.000Z" })
  const read = readWav(clip.sound)
  if (!read.ok) throw new Error(read.because)
  expect(read.value.rateHz).toBe(rateHz)
  const furthest = Math.max(...word(1.5).map((sample, at) => Math.abs(sample - read.value.samples[at]!)))
  expect(furthest).toBeLessThan(1 / 32_000)
  expect(troubles).toEqual([])
})

test("nothing is kept of talk that became no line, nor where the worker did not ask for it", async () => {
  const { keeper } = makeKeeper()
  keeper.hear("chatter", sound())
  keeper.forget("chatter")
  keeper.keep(stampLines([heardLine("chatter")]))
  const off = makeKeeper({ isOn: false }).keeper
  off.hear("h1", sound())
  off.keep(stampLines([heardLine("h1")]))
  await Promise.all([keeper.settled(), off.settled()])
  expect(await keptIds()).toEqual([])
})

test("a device that runs short of room keeps no sound, and says so once", async () => {
  const { keeper, troubles } = makeKeeper({ free: 10_000_000 })
  for (const id of ["h1", "h2"]) {
    keeper.hear(id, sound())
    keeper.keep(stampLines([heardLine(id)]))
  }
  await keeper.settled()
  expect(await keptIds()).toEqual([])
  expect(troubles).toEqual([noRoom])
})

test("sound that gave way to lines is told", () => {
  const { troubles, dropped } = makeKeeper()
  dropped.add(4)
  expect(troubles).toEqual([expect.stringContaining("deleted to make room")])
})

const day = (days: number) => Date.UTC(2026, 2, 1) + days * 24 * 60 * 60 * 1000
const note = (heard: string, job: string, atDay: number): ClipNote => ({
  v: 1,
  job,
  heard,
  at: new Date(day(atDay)).toISOString(),
  from: 0,
  seconds: 1,
  type: "audio/wav",
  bytes: 1,
  silenced: [],
})
const jobs = [
  { job: "open", signedOff: false },
  { job: "signed", signedOff: true },
]

test.each([
  ["signed", ["s", "gone"]],
  ["30", ["old", "gone"]],
  ["90", ["gone"]],
  ["deleted", ["gone"]],
] as const)("kept until %s: past it are %j", (keepFor, past) => {
  const notes = [note("old", "open", -31), note("new", "open", -30), note("s", "signed", 0), note("gone", "other", 0)]
  expect(pastKeeping(notes, keepFor, jobs, day(0)).map((one) => one.heard)).toEqual(past)
})

test("a clip whose time cannot be read is past every number of days", () => {
  const odd = { ...note("odd", "open", 0), at: "soon" }
  expect(keepForChoices.filter((keepFor) => pastKeeping([odd], keepFor, jobs, day(0)).length > 0)).toEqual(["30", "90"])
})

test("at the start, clips past their time and those of jobs that are gone are deleted, and the others stay", async () => {
  const store = createMemoryStore()
  await store.append(stampLines([opened], "open"))
  for (const one of [note("old", "open", -31), note("new", "open", -2), note("lost", "gone", -2)])
    await clips.put({ ...one, sound: Uint8Array.of(1) })
  expect(await tidySound(clips, store, "30", day(0))).toBe(2)
  expect(await keptIds()).toEqual(["new"])
})

test("the settings see how much there is, and delete all of it", async () => {
  const shelf = createSoundShelf(clips)
  for (const one of [note("a", "open", 0), note("b", "open", 0)])
    await clips.put({ ...one, bytes: 700, sound: new Uint8Array(700) })
  expect(await shelf.sum()).toEqual({ clips: 2, bytes: 1400 })
  expect(await shelf.clear()).toEqual(done(undefined))
  expect(await shelf.sum()).toEqual({ clips: 0, bytes: 0 })
})

/** Loudest sample between two times. */
const peak = (samples: Float32Array, from: number, to: number) =>
  samples.slice(from * rateHz, to * rateHz).reduce((most, sample) => Math.max(most, Math.abs(sample)), 0)

test("a stretch is wiped with a little on either side, and the rest is untouched", () => {
  const samples = word(4)
  const wiped = wipeStretch(samples, rateHz, { start: 1.5, end: 2 })
  expect(peak(wiped, 1.39, 2.11)).toBe(0)
  expect(wiped.slice(0, 1.37 * rateHz)).toEqual(samples.slice(0, 1.37 * rateHz))
  expect(wiped.slice(2.13 * rateHz)).toEqual(samples.slice(2.13 * rateHz))
})

test("a stretch at either end takes all of the sound up to it", () => {
  expect(peak(wipeStretch(word(2), rateHz, { start: 0.3, end: 0.8 }), 0, 0.9)).toBe(0)
  expect(peak(wipeStretch(word(2), rateHz, { start: 1.2, end: 1.75 }), 1.1, 2)).toBe(0)
  expect(peak(wipeStretch(word(1), rateHz, { start: 0.3, end: 0.75 }), 0, 1)).toBe(0)
})

const wavTools = {
  decode: async (blob: Blob) => readWav(new Uint8Array(await blob.arrayBuffer())),
  encode: async ({ samples, rateHz: hz }: { samples: Float32Array; rateHz: number }) => plainEncode(samples, hz),
}
const keepOne = async (samples: Float32Array) => {
  const { type, bytes } = await plainEncode(samples, rateHz)
  await clips.put({ ...note("h1", "open", 0), from: 4.5, type, bytes: bytes.length, sound: bytes })
}
const key = { job: "open", heard: "h1" }

test("struck words are silence in the kept sound from then on, with a mark", async () => {
  await keepOne(word(4))
  const desk = createDeskSound(clips, wavTools)
  expect(await desk.silence(key, 6, 6.5)).toEqual(done(undefined))
  const kept = (await desk.of(key))!
  expect(kept).toMatchObject({ from: 4.5, isSilenced: true })
  const read = await wavTools.decode(kept.blob)
  if (!read.ok) throw new Error(read.because)
  expect(peak(read.value.samples, 1.4, 2.1)).toBe(0)
  expect(peak(read.value.samples, 0, 1.3)).toBeGreaterThan(0.1)
  expect((await clips.read(key))?.silenced).toEqual([{ start: 6, end: 6.5 }])
})

test("sound that cannot be decoded goes whole rather than keep the private words", async () => {
  await keepOne(word(4))
  const desk = createDeskSound(clips, { ...wavTools, decode: async () => refuse("no") })
  expect(await desk.silence(key, 6, 6.5)).toEqual(done(undefined))
  expect(await desk.of(key)).toBeNull()
  expect(await desk.silence(key, 6, 6.5)).toEqual(done(undefined))
})

test("of a recording, the stretches of its utterances are kept at the ear's rate", async () => {
  const recording = { samples: new Float32Array([...silence(2), ...word(1), ...silence(1)]), rateHz: 16_000 }
  const free = vi.fn(async () => null)
  const into = { clips, opus: false, free }
  const stretches = new Map([["heard-1", { from: 1.7, seconds: 1.6 }]])
  expect(await keepRecorded(into, { job: "j", at: "2026-03-02T10:00:00+01:00", recording, stretches })).toEqual(
    done(undefined),
  )
  const clip = (await clips.read({ job: "j", heard: "heard-1" }))!
  expect(clip).toMatchObject({ from: 1.7, seconds: 1.6, at: "2026-03-02T09:00:00.000Z" })
  const read = readWav(clip.sound)
  if (!read.ok) throw new Error(read.because)
  expect(read.value.samples).toHaveLength(1.6 * 16_000)
  expect(peak(read.value.samples, 0, 0.29)).toBe(0)
  expect(peak(read.value.samples, 0.3, 1.3)).toBeGreaterThan(0.1)
})

test("of a recording nothing is kept where there is no room", async () => {
  const recording = { samples: word(1), rateHz }
  const kept = await keepRecorded(
    { clips, opus: false, free: async () => 1 },
    { job: "j", at: "2026-03-02T10:00:00Z", recording, stretches: new Map([["h", { from: 0, seconds: 1 }]]) },
  )
  expect(kept).toMatchObject({ ok: false })
  expect(await keptIds()).toEqual([])
})
