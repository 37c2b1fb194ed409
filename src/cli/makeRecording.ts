/**
 * A recording of a job out of a script: synthetic voices say its lines with the pauses it names, and the transcript's
 * cues lie exactly on the words. The same script gives the same bytes. Chatter is what others say nearby: quieter, and
 * in the transcript under a name of its own.
 */
import { parse } from "yaml"
import { z } from "zod"
import { type Cue, writeCues } from "../exports/writeCues"
import { done, type Outcome, refuse } from "../facts/Outcome"
import { encodeWav } from "../speech/encodeWav"
import { fliteVoices, speakToSamples } from "./flite"
import { makeNoise, noiseKinds } from "./makeNoise"
import type { VoiceWord } from "./readVoiceWords"
import { findSpeech, levelOf } from "./trimSpeech"

const Line = z.strictObject({
  text: z.string().min(1),
  voice: z.enum(fliteVoices).optional(),
  /** Seconds of silence after the words. */
  pause: z.number().min(0).max(120).default(1.5),
  chatter: z.boolean().default(false),
  /** How much longer than usual each sound is held. */
  stretch: z.number().min(0.5).max(2).optional(),
  /** Decibels louder or quieter than the others. */
  gainDb: z.number().min(-40).max(12).default(0),
})

export const RecordingScript = z.strictObject({
  about: z.string().optional(),
  /** Who speaks where a line does not say so. */
  voice: z.enum(fliteVoices).default("slt"),
  /** Seconds of silence before the first line. */
  lead: z.number().min(0).max(60).default(0.8),
  noise: z.strictObject({ kind: z.enum(noiseKinds), snrDb: z.number().min(-20).max(90), seed: z.int() }).optional(),
  lines: z.array(Line).min(1),
})
export type RecordingScript = z.infer<typeof RecordingScript>

export interface Recording {
  samples: Float32Array
  rateHz: number
  cues: Cue[]
  wav: Uint8Array
  vtt: string
}

const rateHz = 16_000
/** Loudness of a worker's line as a share of full scale, and what chatter is below it. */
const [speechLevel, chatterDb] = [0.1, -10]
/** Kept of what surrounds the words: a voice's first breath is not cut. */
const marginSeconds = 0.03

/** Reads a script in YAML, or JSON, which is YAML too. */
export const readScript = (text: string): Outcome<RecordingScript> => {
  try {
    const script = RecordingScript.safeParse(parse(text))
    if (script.success) return done(script.data)
    const [issue] = script.error.issues
    return refuse(`${issue?.path.join(".") || "the script"}: ${issue?.message ?? "not a script"}`)
  } catch (error) {
    return refuse(`the script is not YAML: ${(error as Error).message.split("\n")[0]}`)
  }
}

/** `spellings` say how the synthesiser has to be told to say a word. Throws when it fails on a line. */
export const makeRecording = async (
  script: RecordingScript,
  spellings: readonly VoiceWord[] = [],
): Promise<Recording> => {
  const spelled = new Map(spellings.map((word) => [word.name, word.spoken]))
  const parts: Float32Array[] = [silence(script.lead)]
  const cues: Cue[] = []
  let at = parts[0]!.length
  for (const line of script.lines) {
    const words = await speakLine(line, line.voice ?? script.voice, spelled)
    cues.push({
      start: (at + words.from) / rateHz,
      end: (at + words.to) / rateHz,
      text: line.text,
      ...(line.chatter && { speaker: "chatter" }),
    })
    const pause = silence(line.pause)
    parts.push(words.samples, pause)
    at += words.samples.length + pause.length
  }
  const samples = addNoise(join(parts, at), script)
  return { samples, rateHz, cues, wav: encodeWav(samples, rateHz), vtt: writeCues(cues) }
}

interface SpokenLine {
  samples: Float32Array
  /** Where in them the words begin and end. */
  from: number
  to: number
}

const speakLine = async (
  line: RecordingScript["lines"][number],
  voice: RecordingScript["voice"],
  spelled: ReadonlyMap<string, string>,
): Promise<SpokenLine> => {
  // One or two letters are letters here ("p m e"), while the list has them as signs of units.
  const text = line.text.replace(/\p{L}[\p{L}']{2,}/gu, (word) => spelled.get(word.toLowerCase()) ?? word)
  const { samples, rate } = await speakToSamples(text, voice, line.stretch ? { stretch: line.stretch } : {})
  if (rate !== rateHz) throw new Error(`The voice ${voice} speaks at ${rate} Hz`)
  const words = findSpeech(samples, rate)
  const margin = Math.round(marginSeconds * rate)
  const [first, last] = [Math.max(0, words.from - margin), Math.min(samples.length, words.to + margin)]
  const gain = (speechLevel / levelOf(samples.subarray(words.from, words.to))) * 10 ** (gainDbOf(line) / 20)
  const kept = samples.slice(first, last).map((sample) => sample * gain)
  return { samples: kept, from: words.from - first, to: words.to - first }
}

const gainDbOf = (line: RecordingScript["lines"][number]) => line.gainDb + (line.chatter ? chatterDb : 0)

const silence = (seconds: number) => new Float32Array(Math.round(seconds * rateHz))

const join = (parts: readonly Float32Array[], count: number): Float32Array => {
  const whole = new Float32Array(count)
  let at = 0
  for (const part of parts) {
    whole.set(part, at)
    at += part.length
  }
  return whole
}

/** The ratio is that of the worker's speech to the noise, not that of the whole recording with its pauses. */
const addNoise = (samples: Float32Array, { noise }: RecordingScript): Float32Array => {
  if (!noise) return samples
  const level = speechLevel / 10 ** (noise.snrDb / 20)
  const sound = makeNoise({ kind: noise.kind, seed: noise.seed, count: samples.length, rateHz })
  return samples.map((sample, n) => sample + level * sound[n]!)
}
