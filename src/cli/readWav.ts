/**
 * Sound out of a WAV file of any common kind: 8 to 32 bits, whole numbers or floats, A-law and µ-law, any rate, any
 * number of channels (their mean is taken). A file cut off in the middle gives what is there.
 */
import wavefile from "wavefile"
import { done, type Outcome, refuse } from "../facts/Outcome"

export interface Sound {
  /** One channel, -1 to 1. */
  samples: Float32Array
  rateHz: number
}

/** A header alone is this long. */
const leastBytes = 44
/** Rates that a microphone may have, in hertz. */
const [leastRate, mostRate] = [4_000, 384_000]

export const readWav = (bytes: Uint8Array): Outcome<Sound> => {
  if (bytes.length === 0) return refuse("the file is empty")
  const tag = (at: number) => String.fromCharCode(...bytes.subarray(at, at + 4))
  if (!["RIFF", "RIFX", "RF64"].includes(tag(0)) || tag(8) !== "WAVE") return refuse("the file is not a WAV file")
  if (bytes.length < leastBytes) return refuse("the file ends within its header")
  try {
    const file = new wavefile.WaveFile(bytes)
    const { sampleRate, numChannels } = file.fmt as { sampleRate: number; numChannels: number }
    if (sampleRate < leastRate || sampleRate > mostRate)
      return refuse(`its rate of ${sampleRate} Hz is no rate of speech`)
    if (/^(8a|8m)$/.test(file.bitDepth)) file.bitDepth === "8a" ? file.fromALaw() : file.fromMuLaw()
    file.toBitDepth("32f")
    const channels = file.getSamples(false, Float32Array) as unknown as Float32Array | Float32Array[]
    const each = numChannels > 1 ? (channels as Float32Array[]) : [channels as Float32Array]
    const samples = each[0]!.map((_, n) => each.reduce((sum, channel) => sum + (channel[n] ?? 0), 0) / each.length)
    if (samples.some((sample) => !Number.isFinite(sample))) return refuse("the file holds values that are not sound")
    return done({ samples, rateHz: sampleRate })
  } catch {
    return refuse("the file's header is damaged, or its coding is not known")
  }
}
