/** The built-in voice in the page: fetched from the page's own server, once, and seen through when it is not there. */
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest"
import { done, refuse } from "../../src/facts/Outcome"
import { encodeAdpcm } from "../../src/speech/adpcm"
import { createAudioOut } from "../../src/speech/audioOut"
import { createClipVoice } from "../../src/speech/clipVoice"
import { createSpeaker } from "../../src/speech/createSpeaker"
import { loadVoicePack } from "../../src/speech/loadVoicePack"
import type { VoicePack } from "../../src/speech/VoicePack"
import { settle } from "../contracts/speakerContract"
import { FakeAudioContext } from "./fakeAudioContext"
import { toneClips, toneRateHz } from "./toneClips"

const packed = encodeAdpcm(new Float32Array(200).fill(0.1))
const note: VoicePack = {
  version: 1,
  recipe: "test",
  voice: "test",
  licence: "none",
  rateHz: 12_000,
  file: "clips-0123456789ab.bin",
  bytes: packed.bytes.length,
  clips: { water: [0, 200, packed.startStep] },
}
const serve = (files: Record<string, string | Uint8Array>) => async (address: string) => {
  const body = files[address]
  return body === undefined ? new Response(null, { status: 404 }) : new Response(body as BodyInit)
}
const there = { "./voice/voice.json": JSON.stringify(note), [`./voice/${note.file}`]: packed.bytes }

describe("loading", () => {
  test("reads the note, then the file it names, from the folder it was given", async () => {
    const loaded = await loadVoicePack("./voice/", serve(there))
    if (!loaded.ok) throw new Error(loaded.because)
    expect(loaded.value.has("water")).toBe(true)
    expect(loaded.value.has("gas")).toBe(false)
    expect(loaded.value.read("water")).toHaveLength(200)
    expect(loaded.value.read("water")[150]).toBeCloseTo(0.1, 2)
    expect(loaded.value.read("gas")).toHaveLength(0)
  })

  test.each([
    ["nothing is there", {}],
    ["the server answers with its start page", { "./voice/voice.json": "<!doctype html>" }],
    ["the clips are missing", { "./voice/voice.json": JSON.stringify(note) }],
    ["the clips were cut short", { ...there, [`./voice/${note.file}`]: packed.bytes.slice(3) }],
    ["the note is of another version", { ...there, "./voice/voice.json": JSON.stringify({ ...note, version: 2 }) }],
  ])("refuses when %s", async (_, files) => {
    expect(await loadVoicePack("./voice/", serve(files))).toEqual(refuse("The built-in voice could not be loaded."))
  })

  test("refuses when the network is gone", async () => {
    const fetchFile = () => Promise.reject(new TypeError("Failed to fetch"))
    expect((await loadVoicePack("./voice/", fetchFile)).ok).toBe(false)
  })
})

describe("playing", () => {
  beforeEach(() => {
    vi.useFakeTimers()
  })
  afterEach(() => {
    vi.useRealTimers()
  })

  const bench = (settings = { rate: 1, volume: 1, remoteVoices: false }) => {
    const context = new FakeAudioContext()
    const audio = createAudioOut(() => context.asBrowser)
    let loads = 0
    const load = async () => {
      loads += 1
      return loads === 1 ? refuse("The built-in voice could not be loaded.") : done(toneClips(["water", "gas"]))
    }
    const voice = createClipVoice({ audio, load, settings: () => settings })
    return { context, speaker: createSpeaker({ voices: [voice], audio }), loads: () => loads }
  }

  test("a failed load is tried again at the next tap, a good one never", async () => {
    const { speaker, loads } = bench()
    expect((await settle(speaker.prepare())).ok).toBe(false)
    expect((await settle(speaker.prepare())).ok).toBe(true)
    expect((await settle(speaker.prepare())).ok).toBe(true)
    expect(loads()).toBe(2)
  })

  test("the worker's volume and pace are kept, within what stays clear", async () => {
    const { speaker, context } = bench({ rate: 2, volume: 0.4, remoteVoices: false })
    await settle(speaker.prepare())
    await settle(speaker.prepare())
    const before = Date.now()
    await settle(speaker.say("Water. Gas."))
    expect(context.played[0]).toMatchObject({ volume: 0.4, whole: true, rateHz: toneRateHz })
    expect(Date.now() - before).toBeLessThan((1420 / 1.25) * 1.05)
    expect(Date.now() - before).toBeGreaterThan((1420 / 1.25) * 0.95)
  })

  test("hushing stops the sound itself", async () => {
    const { speaker, context } = bench()
    await settle(speaker.prepare())
    await settle(speaker.prepare())
    const said = speaker.say("Water. Gas.")
    await vi.advanceTimersByTimeAsync(100)
    speaker.hush()
    expect((await settle(said, 100)).ok).toBe(false)
    await vi.advanceTimersByTimeAsync(5000)
    expect(context.played.map((one) => one.whole)).toEqual([false])
  })

  test("sound that the browser keeps off is a refusal within seconds, and comes back when it is allowed", async () => {
    const { speaker, context } = bench()
    context.allowed = false
    expect((await settle(speaker.prepare(), 3000)).ok).toBe(false)
    context.allowed = true
    expect((await settle(speaker.prepare(), 3000)).ok).toBe(true)
    // A phone call takes the sound away; the next sentence asks for it again.
    context.state = "suspended"
    expect((await settle(speaker.say("water"))).ok).toBe(true)
    context.state = "suspended"
    context.allowed = false
    expect((await settle(speaker.say("gas"), 5000)).ok).toBe(false)
    expect(context.played).toHaveLength(1)
  })

  test("a browser without Web Audio is told in plain words", async () => {
    const audio = createAudioOut(() => {
      throw new ReferenceError("AudioContext is not defined")
    })
    expect(await audio.wake()).toEqual(refuse("This browser cannot play sounds."))
  })
})
