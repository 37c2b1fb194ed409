/**
 * Sound out of a WAV file of any common kind: 8 to 32 bits, whole numbers or floats, A-law and µ-law, any rate, any
 * number of channels (their mean is taken). A file cut off in the middle gives what is there.
 */
import * as wavefile from "wavefile"
import { done, type Outcome, refuse } from "../facts/Outcome"

export interface Sound {
  /** One channel, -1 to 1. */
  samples: Float32Array
  rateHz: number
}

/** Node gets the package's CommonJS build, whose exports stand in `default`; bundlers get its modules. */
const exported: { default?: typeof wavefile } & Partial<typeof wavefile> = { ...wavefile }
const { WaveFile } = (exported.default ?? exported) as typeof wavefile

/** What stands for silence, and for full scale above it, by bits a sample. */
const spanOf: Record<string, { offset: number; scale: number }> = {
  "8": { offset: 128, scale: 128 },
  "16": { offset: 0, scale: 2 ** 15 },
  "24": { offset: 0, scale: 2 ** 23 },
  "32": { offset: 0, scale: 2 ** 31 },
  "32f": { offset: 0, scale: 1 },
  "64": { offset: 0, scale: 1 },
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
    const file = new WaveFile(bytes)
    const { sampleRate, numChannels } = file.fmt as { sampleRate: number; numChannels: number }
    if (sampleRate < leastRate || sampleRate > mostRate)
      return refuse(`its rate of ${sampleRate} Hz is no rate of speech`)
    if (file.bitDepth === "8a") file.fromALaw()
    else if (file.bitDepth === "8m") file.fromMuLaw()
    const { offset, scale } = spanOf[file.bitDepth] ?? {}
    if (offset === undefined || scale === undefined) return refuse(`it has ${file.bitDepth} bits a sample`)
    const channels = file.getSamples(false, Float64Array) as unknown as Float64Array | Float64Array[]
    const each = numChannels > 1 ? (channels as Float64Array[]) : [channels as Float64Array]
    const total = (n: number) => each.reduce((sum, channel) => sum + (channel[n] ?? 0) - offset, 0)
    const samples = Float32Array.from({ length: each[0]!.length }, (_, n) => total(n) / each.length / scale)
    if (samples.length === 0) return refuse("the file holds no sound")
    if (samples.some((sample) => !Number.isFinite(sample))) return refuse("the file holds values that are not sound")
    return done({ samples, rateHz: sampleRate })
  } catch {
    return refuse("the file's header is damaged, or its coding is not known")
  }
}
