/** How long sound is kept, and which clips are past it. A clip of a job that is not on the device is past it always. */
import type { ClipNote } from "../../record/Clip"

/** Until the job is signed off, so many days, or until somebody deletes it. */
export const keepForChoices = ["signed", "30", "90", "deleted"] as const
export type KeepFor = (typeof keepForChoices)[number]

const dayMs = 24 * 60 * 60 * 1000

interface JobState {
  job: string
  signedOff: boolean
}

/** `jobs` are all jobs on the device; `now` in ms since 1970. A clip whose time cannot be read is past it. */
export const pastKeeping = (
  notes: readonly ClipNote[],
  keepFor: KeepFor,
  jobs: readonly JobState[],
  now: number,
): ClipNote[] => {
  const states = new Map(jobs.map((one) => [one.job, one]))
  const isPast = ({ at }: ClipNote, { signedOff }: JobState) => {
    if (keepFor === "deleted") return false
    if (keepFor === "signed") return signedOff
    return !(now - Date.parse(at) <= Number(keepFor) * dayMs)
  }
  return notes.filter((note) => {
    const state = states.get(note.job)
    return !state || isPast(note, state)
  })
}
