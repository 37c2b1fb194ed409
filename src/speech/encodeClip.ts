/**
 * The sound of one utterance as a small file: Opus in Ogg where the browser can make and play it, a tenth of the size,
 * else a plain WAV file. Whatever goes wrong with the one, the other is made.
 */
import { encodeWav } from "./encodeWav"

export interface EncodedClip {
  /** Media type. */
  type: string
  bytes: Uint8Array
}

export const oggOpus = "audio/ogg; codecs=opus"
export const wav = "audio/wav"

/** Bits a second, a little above the 16 to 20 kbit/s that RFC 6716, section 2.1.1, gives for wideband speech. */
const bitrate = 24_000

/** Whether this browser can play what would be made; encoding is found out by doing it. */
export const playsOpus = (): boolean =>
  typeof Audio !== "undefined" && new Audio().canPlayType(oggOpus.replace("opus", '"opus"')) !== ""

const encodeOpus = async (samples: Float32Array, rateHz: number): Promise<EncodedClip | null> => {
  if (typeof AudioEncoder === "undefined") return null
  const { AudioSample, AudioSampleSource, BufferTarget, canEncodeAudio, OggOutputFormat, Output } = await import(
    "mediabunny"
  )
  const shape = { numberOfChannels: 1, sampleRate: rateHz }
  if (!(await canEncodeAudio("opus", { ...shape, bitrate }))) return null
  const output = new Output({ format: new OggOutputFormat(), target: new BufferTarget() })
  const source = new AudioSampleSource({ codec: "opus", bitrate })
  output.addAudioTrack(source)
  await output.start()
  const sample = new AudioSample({ ...shape, data: samples as Float32Array<ArrayBuffer>, format: "f32", timestamp: 0 })
  await source.add(sample)
  sample.close()
  await output.finalize()
  const { buffer } = output.target
  return buffer ? { type: oggOpus, bytes: new Uint8Array(buffer) } : null
}

/** `samples` are one channel, -1 to 1; `opus` tells whether this page can play Opus. Never fails: a WAV file always works. */
export const encodeClip = async (samples: Float32Array, rateHz: number, opus: boolean): Promise<EncodedClip> => {
  const made = opus ? await encodeOpus(samples, rateHz).catch(() => null) : null
  return made ?? { type: wav, bytes: encodeWav(samples, rateHz) }
}
