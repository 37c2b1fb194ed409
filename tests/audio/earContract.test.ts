/** The offline ear itself, on synthetic speech, keeps the contract of all ears. Needs the pack that `npm run ear` makes. */
import { beforeAll } from "vitest"
import { speakToSamples } from "../../src/cli/flite"
import { openEar } from "../../src/cli/openEar"
import { createSoundListener } from "../../src/speech/soundListener"
import { describeListener } from "../contracts/listenerContract"

const sentences = ["yes", "no", "water bond sixteen square"] as const
const sounds = new Map<string, Float32Array>()
let rateHz = 0

beforeAll(async () => {
  for (const text of sentences) {
    const { samples, rate } = await speakToSamples(text, "slt")
    sounds.set(text, samples)
    rateHz = rate
  }
})

describeListener("the offline ear", async () => {
  const listener = createSoundListener({ load: () => openEar() })
  /** In packets of the length that a browser's sound thread sends. */
  const feed = (samples: Float32Array) => {
    for (let at = 0; at < samples.length; at += 683) listener.feed(samples.subarray(at, at + 683), rateHz)
  }
  const pause = (seconds: number) => feed(new Float32Array(Math.round(seconds * rateHz)))
  return {
    listener,
    pause,
    say: (text) => {
      feed(sounds.get(text)!)
      pause(2)
    },
  }
})
