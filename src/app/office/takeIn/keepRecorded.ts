/**
 * Keeps the sound of a recording's utterances that became lines of a job, cut out of the recording. The lines are stored
 * before: no line waits for sound, and where there is no room the sound is left out and said to be.
 */
import { type Outcome, refuse } from "../../../facts/Outcome"
import type { ClipStore } from "../../../record/Clip"
import { type EncodedClip, encodeClip } from "../../../speech/encodeClip"
import type { UtteranceSound } from "../../../speech/Listener"
import type { Sound } from "../../../speech/readWav"
import { resample } from "../../../speech/resample"
import { fewBytes } from "../../offline/storageCare"

/** The rate that clips are kept at, in hertz: the ear's. */
const rateHz = 16_000

export interface RecordingClips {
  clips: ClipStore
  /** Whether the page can play Opus. */
  opus: boolean
  free(): Promise<number | null>
  encode?(samples: Float32Array, rateHz: number, opus: boolean): Promise<EncodedClip>
}

export interface Recorded {
  job: string
  /** When it was taken in, ISO 8601. */
  at: string
  recording: Sound
  /** Utterances that are lines of the job, with where they lie in the recording, in seconds. */
  stretches: ReadonlyMap<string, { from: number; seconds: number }>
}

/** Where the ear found an utterance; its samples are not held on to, since an hour of them is a hundred megabytes. */
export const stretchOf = ({ samples, rateHz, from }: UtteranceSound) => ({ from, seconds: samples.length / rateHz })

/** Refuses at the first clip that there is no room for; those before it stay. */
export const keepRecorded = async (into: RecordingClips, recorded: Recorded): Promise<Outcome> => {
  const { clips, opus, free, encode = encodeClip } = into
  const { job, at, recording, stretches } = recorded
  const left = await free()
  if (left !== null && left < fewBytes) return refuse("This device runs short of room.")
  for (const [heard, { from, seconds }] of stretches) {
    const [first, end] = [from, from + seconds].map((time) => Math.round(time * recording.rateHz))
    const samples = resample(recording.samples.slice(first, end), recording.rateHz, rateHz)
    const { type, bytes } = await encode(samples, rateHz, opus)
    const utc = new Date(at).toISOString()
    const note = { v: 1 as const, job, heard, at: utc, from, seconds, type, bytes: bytes.length, silenced: [] }
    const kept = await clips.put({ ...note, sound: bytes })
    if (!kept.ok) return kept
  }
  return { ok: true, value: undefined }
}
