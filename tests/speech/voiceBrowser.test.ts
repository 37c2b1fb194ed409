/** The browser's voice: the field reports S18 and S19 replayed, and the choice, cutting and falling back around them. */
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest"
import { done, refuse } from "../../src/facts/Outcome"
import { createAudioOut } from "../../src/speech/audioOut"
import { createBrowserVoice } from "../../src/speech/browserVoice"
import { createClipVoice } from "../../src/speech/clipVoice"
import { createSpeaker } from "../../src/speech/createSpeaker"
import { type ListedVoice, pickVoice } from "../../src/speech/pickVoice"
import { splitSpeech } from "../../src/speech/splitSpeech"
import { usualVoiceSettings } from "../../src/speech/VoiceSettings"
import { settle } from "../contracts/speakerContract"
import { FakeAudioContext } from "./fakeAudioContext"
import { FakeSynthesis, localVoice } from "./fakeSynthesis"
import { toneClips, toneRateHz, wordsIn } from "./toneClips"

const words = ["warning", "water", "gas"]

interface Device {
  voices?: ListedVoice[]
  pack?: boolean
  settings?: typeof usualVoiceSettings
}

/** The whole speaker of the app on a faked device. */
const device = ({ voices = [localVoice], pack = true, settings = usualVoiceSettings }: Device = {}) => {
  const synthesis = new FakeSynthesis()
  synthesis.voices = voices
  const context = new FakeAudioContext()
  const audio = createAudioOut(() => context.asBrowser)
  const loads: number[] = []
  const load = async () => {
    loads.push(Date.now())
    return pack ? done(toneClips(words)) : refuse("The built-in voice could not be loaded.")
  }
  const shared = { synthesis: synthesis.asBrowser, makeUtterance: synthesis.makeUtterance, settings: () => settings }
  const speaker = createSpeaker({
    audio,
    settings: () => settings,
    voices: [
      createBrowserVoice(shared),
      createClipVoice({ audio, load, settings: () => settings }),
      createBrowserVoice({ ...shared, unlisted: true }),
    ],
  })
  const clipped = () =>
    context.played.filter((one) => one.rateHz === toneRateHz).map((one) => wordsIn(one.samples, words).join(" "))
  return { synthesis, context, speaker, loads, clipped }
}

let start = 0
beforeEach(() => {
  vi.useFakeTimers()
  start = Date.now()
})
afterEach(() => {
  vi.useRealTimers()
})
const sinceStart = () => Date.now() - start

describe("S18: the list of voices comes late, or in the wrong language", () => {
  test.each([
    { trace: "A, late list with the event", atMs: 350, event: true, spokenByMs: 400 },
    { trace: "B, late list without an event", atMs: 799, event: false, spokenByMs: 850 },
  ])("S18 $trace: speaks English within about a second", async ({ atMs, event, spokenByMs }) => {
    const { speaker, synthesis, loads } = device({ voices: [] })
    const prepared = speaker.prepare()
    const said = speaker.say("warning")
    setTimeout(() => synthesis.arrive([localVoice], event), atMs)
    await settle(prepared)
    expect((await settle(said)).ok).toBe(true)
    expect(synthesis.spoken[0]!.at - start).toBeLessThan(spokenByMs)
    expect(synthesis.spoken[0]!.utterance.voice).toEqual(localVoice)
    expect(loads).toEqual([])
  })

  test("S18 C, Android's underscores: every utterance carries en-GB, and the German voice is left alone", async () => {
    const android = [
      { name: "English UK", lang: "en_GB", localService: true },
      { name: "German", lang: "de_DE", localService: true },
    ]
    const { speaker, synthesis } = device({ voices: android.toReversed() })
    await settle(speaker.prepare())
    for (const words of ["nought point four ohms", "warning"]) await settle(speaker.say(words))
    expect(synthesis.spoken.map((one) => one.utterance.lang)).toEqual(["en-GB", "en-GB"])
    expect(synthesis.spoken.map((one) => one.utterance.voice?.name)).toEqual(["English UK", "English UK"])
  })

  test("S18 an empty list for good: the built-in voice speaks within about a second", async () => {
    const { speaker, synthesis, context, clipped } = device({ voices: [] })
    await settle(speaker.prepare())
    expect((await settle(speaker.say("Warning. Water."))).ok).toBe(true)
    expect(clipped()).toEqual(["warning water"])
    expect(context.played[0]!.at - start).toBeLessThan(1200)
    expect(synthesis.spoken).toEqual([])
    expect(speaker.voiceName()).toBe("built-in voice")
  })

  test("S18 an empty list for good and no built-in voice: speaks with the default voice, in en-GB", async () => {
    const { speaker, synthesis } = device({ voices: [], pack: false })
    expect((await settle(speaker.prepare())).ok).toBe(true)
    expect((await settle(speaker.say("warning"))).ok).toBe(true)
    expect(synthesis.spoken.map(({ utterance }) => [utterance.voice, utterance.lang])).toEqual([[null, "en-GB"]])
  })

  test("S18 voices that arrive after everybody gave up are used from then on", async () => {
    const { speaker, synthesis, clipped } = device({ voices: [] })
    await settle(speaker.prepare())
    await settle(speaker.say("water"))
    synthesis.arrive([localVoice], false)
    await settle(speaker.say("gas"))
    expect(clipped()).toEqual(["water"])
    expect(synthesis.spoken.map((one) => one.utterance.text)).toEqual(["gas"])
  })
})

describe("S19: silent before a tap, faint after the microphone", () => {
  test("S19 A, no tap yet: the sentence does not count as spoken, and is spoken from the first tap on", async () => {
    const { speaker, synthesis } = device()
    synthesis.how = { error: "not-allowed" }
    expect(await settle(speaker.say("Ready for circuit one."))).toEqual(
      refuse("The voice has to be woken by a tap first."),
    )
    expect(synthesis.asked).toEqual([])
    synthesis.how = {}
    const tapped = speaker.prepare()
    const said = speaker.say("Ready for circuit one.")
    await settle(tapped)
    expect((await settle(said)).ok).toBe(true)
    expect(synthesis.spoken.map((one) => one.utterance.text)).toEqual(["Ready for circuit one."])
  })

  test.each([{ how: { error: "not-allowed" } }, { how: { neverStarts: true } }])(
    "S19 A, refused by the browser ($how): never counted as spoken by it; the built-in voice says it",
    async ({ how }) => {
      const { speaker, synthesis, clipped } = device()
      await settle(speaker.prepare())
      synthesis.how = how
      expect((await settle(speaker.say("warning"))).ok).toBe(true)
      expect(synthesis.spoken).toEqual([])
      expect(clipped()).toEqual(["warning"])
      // It is not waited for a second time, until a tap gives it another chance.
      const before = sinceStart()
      await settle(speaker.say("gas"))
      expect(sinceStart() - before).toBeLessThan(1000)
      expect(speaker.voiceName()).toBe("built-in voice")
      synthesis.how = {}
      await settle(speaker.prepare())
      await settle(speaker.say("water"))
      expect(synthesis.spoken.map((one) => one.utterance.text)).toEqual(["water"])
    },
  )

  test("S19 A, refused everywhere: the refusal says why", async () => {
    const { speaker, synthesis } = device({ pack: false })
    await settle(speaker.prepare())
    synthesis.how = { error: "not-allowed" }
    expect(await settle(speaker.say("warning"))).toEqual(refuse("The browser speaks only after a tap."))
  })

  test("S19 the blank that unlocks an iPhone is spoken before the tap's first wait", () => {
    const { speaker, synthesis } = device()
    const speak = vi.spyOn(synthesis, "speak")
    void speaker.prepare()
    expect(speak).toHaveBeenCalledTimes(1)
    expect(speak.mock.calls[0]![0]).toMatchObject({ text: " ", volume: 0, lang: "en-GB" })
  })

  test("S19 B, faint after the microphone: saying it again is possible at once, as nothing shows that it was faint", async () => {
    const { speaker, synthesis } = device()
    await settle(speaker.prepare())
    for (let n = 0; n < 2; n++) expect((await settle(speaker.say("Check the size."))).ok).toBe(true)
    expect(synthesis.spoken).toHaveLength(2)
    expect(synthesis.spoken.every((one) => one.utterance.volume === 1)).toBe(true)
  })
})

describe("what the browser says cannot be relied on", () => {
  test("an end that never comes is given up in step with the length, and a missing start is no loss", async () => {
    const { speaker, synthesis } = device()
    await settle(speaker.prepare())
    synthesis.how = { losesEnd: true }
    const before = sinceStart()
    expect((await settle(speaker.say("Water. Sixteen square."))).ok).toBe(true)
    expect(sinceStart() - before).toBeGreaterThan(22 * 70)
    expect(sinceStart() - before).toBeLessThan(7000)
    synthesis.how = { noStart: true }
    expect((await settle(speaker.say("gas"))).ok).toBe(true)
    expect(synthesis.spoken.map((one) => one.utterance.text)).toEqual(["Water. Sixteen square.", "gas"])
  })

  test("a voice stuck on something else, or paused, is freed first", async () => {
    const { speaker, synthesis } = device()
    await settle(speaker.prepare())
    synthesis.stick()
    synthesis.paused = true
    expect((await settle(speaker.say("gas"))).ok).toBe(true)
    expect(synthesis.paused).toBe(false)
    expect(synthesis.spoken).toHaveLength(1)
  })

  test("a voice that would send the words away is used only when allowed", async () => {
    const remote = { name: "Far", lang: "en-GB", localService: false }
    const shy = device({ voices: [remote], pack: false })
    expect(await settle(shy.speaker.prepare())).toEqual(refuse("The only voices here would send the words away."))
    expect((await settle(shy.speaker.say("warning"))).ok).toBe(false)
    expect(shy.synthesis.asked).toEqual([])
    expect(shy.speaker.voiceName()).toBeNull()
    const open = device({ voices: [remote], settings: { rate: 1.2, volume: 0.5, remoteVoices: true } })
    await settle(open.speaker.prepare())
    await settle(open.speaker.say("warning"))
    expect(open.synthesis.spoken[0]!.utterance).toMatchObject({ voice: remote, rate: 1.2, volume: 0.5 })
  })
})

test("the nearest English accent on the device wins", () => {
  const voice = (lang: string, localService = true) => ({ name: lang, lang, localService })
  const pick = (...voices: ListedVoice[]) => pickVoice(voices, false)?.name ?? null
  expect(pick(voice("de-DE"), voice("en-US"), voice("en_GB"), voice("en-IE"))).toBe("en_GB")
  expect(pick(voice("en-GB", false), voice("en-US"))).toBe("en-US")
  expect(pick(voice("en"), voice("fr-FR"))).toBe("en")
  expect(pick(voice("EN-gb"))).toBe("EN-gb")
  expect(pick(voice("de-DE"), voice("enm"))).toBeNull()
  expect(pickVoice([voice("en-GB", false)], true)?.name).toBe("en-GB")
  expect(pickVoice([voice("en-GB", false), voice("en-US")], true)?.name).toBe("en-US")
})

test("long texts are cut at full stops, then commas, then blanks, and nothing is lost", () => {
  const text = "One two three. Four five six, seven eight nine ten eleven. Twelve."
  expect(splitSpeech(text)).toEqual([text])
  expect(splitSpeech(text, 30)).toEqual(["One two three.", "Four five six,", "seven eight nine ten eleven.", "Twelve."])
  expect(splitSpeech("a".repeat(70), 30)).toEqual(["a".repeat(30), "a".repeat(30), "a".repeat(10)])
  expect(splitSpeech("  ")).toEqual([])
})
