/** A recording of any kind that this browser knows, as one channel at the ear's rate. Browsers decode on their own threads. */
import { done, type Outcome, refuse } from "../../../facts/Outcome"
import type { Sound } from "../../../speech/readWav"

/** The rate that the ear's model wants, in hertz; the browser brings the sound to it while decoding. */
const rateHz = 16_000

export const decodeSound = async (file: Blob): Promise<Outcome<Sound>> => {
  try {
    const context = new OfflineAudioContext(1, 1, rateHz)
    const sound = await context.decodeAudioData(await file.arrayBuffer())
    return done({ samples: mixed(sound), rateHz: sound.sampleRate })
  } catch {
    return refuse("this browser cannot decode it")
  }
}

const mixed = (sound: AudioBuffer): Float32Array => {
  const channels = Array.from({ length: sound.numberOfChannels }, (_, at) => sound.getChannelData(at))
  if (channels.length === 1) return channels[0]!.slice()
  return channels[0]!.map((_, at) => channels.reduce((sum, channel) => sum + channel[at]!, 0) / channels.length)
}
