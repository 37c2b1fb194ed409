/**
 * Makes the fallback voice: every word of the list is spoken by the synthesiser, trimmed, brought to one loudness and
 * packed. Made at build time and never committed. A clip that is there from last time, made by the same recipe, is kept.
 */
import { createHash } from "node:crypto"
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { join } from "node:path"
import { encodeAdpcm, type Packed } from "../speech/adpcm"
import { resample } from "../speech/resample"
import { VoicePack } from "../speech/VoicePack"
import { type FliteVoice, speakToSamples } from "./flite"
import type { VoiceWord } from "./readVoiceWords"
import { levelOf, trimSpeech } from "./trimSpeech"

const voice: FliteVoice = "slt"
/** Loudness of every clip, and the peak that none may pass, as shares of full scale. */
const [wantedLevel, mostPeak] = [0.13, 0.9]
/** A word by itself is spoken as if it ended a sentence, which is long; the pace takes some of that back. */
const [wordStretch, phraseStretch] = [0.85, 1]
/** Speech on a phone's loudspeaker keeps its consonants up to 5.5 kHz, and a quarter of the file is saved. */
const packRateHz = 12_000
const licence = "Spoken by Flite, Carnegie Mellon University; its licence allows any use that keeps this notice."
/** To be changed with anything above or below that changes the sound. */
const recipe = `1 ${voice} ${wantedLevel} ${mostPeak} ${wordStretch} ${phraseStretch} ${packRateHz}`

export interface MadePack {
  /** False when the pack was there already. */
  made: boolean
  words: number
  bytes: number
}

export interface VoicePackOrder {
  words: readonly VoiceWord[]
  /** Folder that the pack is put in; made if need be. */
  out: string
  /** Called before each word, as the whole takes half a minute. */
  progress?(done: number, of: number): void
}

/** Makes the pack, or what is new in it. Throws when the synthesiser fails on a word. */
export const makeVoicePack = async ({ words, out, progress }: VoicePackOrder): Promise<MadePack> => {
  const old = readPack(out)
  const isThere = old && Object.keys(old.pack.clips).length === words.length && words.every((word) => clipIn(old, word))
  if (isThere) return { made: false, words: words.length, bytes: old.pack.bytes }

  const clips: VoicePack["clips"] = {}
  const parts: Uint8Array[] = []
  const bySpelling = new Map<string, VoicePack["clips"][string]>()
  let bytes = 0
  for (const [at, word] of words.entries()) {
    progress?.(at, words.length)
    const same = bySpelling.get(word.spoken)
    const clip = same ? null : (clipIn(old, word) ?? (await packClip(word)))
    const [from, count, startStep] = same ?? [bytes, clip!.count, clip!.startStep]
    clips[word.name] = word.spoken === word.name ? [from, count, startStep] : [from, count, startStep, word.spoken]
    if (!clip) continue
    bySpelling.set(word.spoken, clips[word.name]!)
    parts.push(clip.bytes)
    bytes += clip.bytes.length
  }
  writePack(out, clips, Buffer.concat(parts))
  return { made: true, words: words.length, bytes }
}

interface PackedClip extends Packed {
  count: number
}

interface PackOnDisk {
  pack: VoicePack
  bytes: Uint8Array
}

const packClip = async (word: VoiceWord): Promise<PackedClip> => {
  const samples = await speakClip(word)
  return { ...encodeAdpcm(samples), count: samples.length }
}

/** The clip of a word in an older pack, if it was spelled the same. */
const clipIn = (old: PackOnDisk | null, word: VoiceWord): PackedClip | null => {
  const place = old?.pack.clips[word.name]
  if (!old || !place || (place[3] ?? word.name) !== word.spoken) return null
  const [from, count, startStep] = place
  return { bytes: old.bytes.subarray(from, from + ((count + 1) >> 1)), count, startStep }
}

/** One word or phrase at the rate of the pack, as it goes in before it is packed. */
export const speakClip = async ({ name, spoken }: VoiceWord): Promise<Float32Array> => {
  const stretch = name.includes(" ") ? phraseStretch : wordStretch
  const speech = await speakToSamples(spoken, voice, { stretch })
  const samples = trimSpeech(resample(speech.samples, speech.rate, packRateHz), packRateHz)
  const peak = samples.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0)
  const gain = Math.min(wantedLevel / levelOf(samples), mostPeak / peak)
  return samples.map((sample) => sample * gain)
}

/** A pack that is whole and was made by this recipe, else null. */
const readPack = (out: string): PackOnDisk | null => {
  const note = join(out, "voice.json")
  if (!existsSync(note)) return null
  const pack = VoicePack.safeParse(JSON.parse(readFileSync(note, "utf8")))
  if (!pack.success || pack.data.recipe !== recipe) return null
  const file = join(out, pack.data.file)
  if (!existsSync(file)) return null
  const bytes = readFileSync(file)
  return fileName(bytes) === pack.data.file ? { pack: pack.data, bytes } : null
}

const writePack = (out: string, clips: VoicePack["clips"], bytes: Uint8Array): void => {
  const file = fileName(bytes)
  const note = {
    version: 1,
    recipe,
    voice: `flite ${voice}`,
    licence,
    rateHz: packRateHz,
    file,
    bytes: bytes.length,
    clips,
  }
  mkdirSync(out, { recursive: true })
  writeFileSync(join(out, file), bytes)
  writeFileSync(join(out, "voice.json"), JSON.stringify(VoicePack.parse(note)))
  for (const name of readdirSync(out)) {
    if (/^clips-.*\.bin$/.test(name) && name !== file) rmSync(join(out, name))
  }
}

const fileName = (bytes: Uint8Array) => `clips-${createHash("sha256").update(bytes).digest("hex").slice(0, 12)}.bin`
