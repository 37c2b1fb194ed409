/**
 * Four short sounds that say without words: I am listening, got it, say again, warning. They differ in rhythm as well as
 * in pitch (one short, two quick, two long, three loud), and lie between 300 and 2500 Hz, where a small loudspeaker is
 * strong and hearing is least worn by age and noise (common practice, no source).
 */
import type { Sound } from "./Speaker"

interface Note {
  hz: number
  fromMs: number
  lengthMs: number
  /** Peak of the note, as a share of full scale. */
  level: number
  /** Strength of the whole multiples of the pitch, the first of which is the pitch itself. */
  partials: readonly number[]
}

const soft = [1]
const warm = [1, 0.3, 0.1]
const sharp = [1, 0.6, 0.5, 0.3]

export const sounds: Readonly<Record<Sound, readonly Note[]>> = {
  listening: [{ hz: 880, fromMs: 0, lengthMs: 90, level: 0.35, partials: soft }],
  gotIt: [
    { hz: 660, fromMs: 0, lengthMs: 70, level: 0.4, partials: soft },
    { hz: 1320, fromMs: 95, lengthMs: 95, level: 0.4, partials: soft },
  ],
  sayAgain: [
    { hz: 520, fromMs: 0, lengthMs: 140, level: 0.5, partials: warm },
    { hz: 390, fromMs: 190, lengthMs: 150, level: 0.5, partials: warm },
  ],
  warning: [
    { hz: 1050, fromMs: 0, lengthMs: 120, level: 0.8, partials: sharp },
    { hz: 790, fromMs: 210, lengthMs: 120, level: 0.8, partials: sharp },
    { hz: 1050, fromMs: 420, lengthMs: 160, level: 0.8, partials: sharp },
  ],
}

/** So long a note swells and fades: a sudden edge would click. */
const edgeMs = 8

/** How long a sound lasts. */
export const soundMs = (sound: Sound): number => Math.max(...sounds[sound].map((note) => note.fromMs + note.lengthMs))

/** One channel at the given rate. */
export const renderSound = (sound: Sound, rateHz: number): Float32Array => {
  const samples = new Float32Array(Math.ceil((soundMs(sound) / 1000) * rateHz))
  for (const note of sounds[sound]) addNote(samples, note, rateHz)
  return samples
}

const addNote = (samples: Float32Array, note: Note, rateHz: number): void => {
  const first = Math.round((note.fromMs / 1000) * rateHz)
  const count = Math.floor((note.lengthMs / 1000) * rateHz)
  const loudness = note.level / peakOf(note.partials)
  for (let n = 0; n < count; n++) {
    const seconds = n / rateHz
    const edge = Math.min(1, (1000 * seconds) / edgeMs, (note.lengthMs - 1000 * seconds) / edgeMs)
    samples[first + n]! += loudness * edge * toneAt(note.partials, note.hz * seconds)
  }
}

/** The tone after so many turns of its lowest partial. */
const toneAt = (partials: readonly number[], turns: number): number =>
  partials.reduce((sum, strength, at) => sum + strength * Math.sin(2 * Math.PI * (at + 1) * turns), 0)

/** The highest point of one turn. */
const peakOf = (partials: readonly number[]): number =>
  Math.max(...Array.from({ length: 360 }, (_, degree) => Math.abs(toneAt(partials, degree / 360))))
