/** Every speaker of the product keeps to the one contract, each with its own output faked. */
import { refuse } from "../../src/facts/Outcome"
import { createAudioOut } from "../../src/speech/audioOut"
import { createBrowserVoice } from "../../src/speech/browserVoice"
import { createClipVoice } from "../../src/speech/clipVoice"
import { createSpeaker } from "../../src/speech/createSpeaker"
import { createScriptedVoice } from "../../src/speech/scriptedVoice"
import { type SpeakerBench, speakerContract } from "../contracts/speakerContract"
import { FakeAudioContext, type Played } from "./fakeAudioContext"
import { FakeSynthesis } from "./fakeSynthesis"
import { toneClips, toneRateHz, wordsIn } from "./toneClips"

const words = ["water", "ten", "square", "gas"]
const isClip = (one: Played) => one.rateHz === toneRateHz
const soundsOf = (context: FakeAudioContext) => context.played.filter((one) => !isClip(one)).length

speakerContract("scripted voice", {
  make: () => {
    let loses = false
    const speaker = createScriptedVoice({ now: () => 0, lengthMs: () => (loses ? 0 : 400) })
    return {
      speaker,
      heard: () => speaker.spoken.flatMap((one) => ("words" in one ? [one.words] : [])),
      sounds: () => speaker.spoken.filter((one) => "sound" in one).length,
      loseEnds: () => {
        loses = true
      },
    }
  },
  makeMute: () => {
    const speaker = createScriptedVoice({ now: () => 0, mute: () => "Nothing can speak here." })
    return { speaker, heard: () => [], sounds: () => 0, loseEnds: () => undefined }
  },
})

const browserBench = (voices: FakeSynthesis["voices"], missing = false): SpeakerBench => {
  const synthesis = new FakeSynthesis()
  synthesis.voices = voices
  const context = new FakeAudioContext()
  const voice = createBrowserVoice({
    synthesis: missing ? undefined : synthesis.asBrowser,
    makeUtterance: synthesis.makeUtterance,
  })
  return {
    speaker: createSpeaker({ voices: [voice], audio: createAudioOut(() => context.asBrowser) }),
    heard: () => synthesis.spoken.map((one) => one.utterance.text),
    sounds: () => soundsOf(context),
    loseEnds: () => {
      synthesis.how = { losesEnd: true }
      context.losesEnd = true
    },
  }
}
const local = [{ name: "UK", lang: "en-GB", localService: true }]
speakerContract("browser's voice", { make: () => browserBench(local), makeMute: () => browserBench([]) })
speakerContract("no speech output at all", { make: () => browserBench(local), makeMute: () => browserBench([], true) })

const clipBench = (withPack: boolean): SpeakerBench => {
  const context = new FakeAudioContext()
  const audio = createAudioOut(() => context.asBrowser)
  const clips = toneClips(words)
  const load = async () =>
    withPack ? ({ ok: true, value: clips } as const) : refuse("The built-in voice could not be loaded.")
  return {
    speaker: createSpeaker({ voices: [createClipVoice({ audio, load })], audio }),
    heard: () => context.played.filter(isClip).map((one) => wordsIn(one.samples, words).join(" ")),
    sounds: () => soundsOf(context),
    loseEnds: () => {
      context.losesEnd = true
    },
  }
}
speakerContract("built-in voice", { make: () => clipBench(true), makeMute: () => clipBench(false) })
