/**
 * What can be done at the desk: each thing becomes lines of the log, is stored, and is then told in a sentence. What the
 * store refuses is told as well, and nothing on the screen claims otherwise.
 */
import { useCallback, useState } from "react"
import { done, type Outcome } from "../../../facts/Outcome"
import type { LogLine } from "../../../record/LogLine"
import { project } from "../../../record/project"
import { type Stretch, strike } from "../../../record/strike"
import { Additions } from "../../../review/Additions"
import type { Change } from "../../../review/Change"
import { type ChangeTools, draftChange } from "../../../review/draftChange"
import type { ReviewedJob } from "../../../review/ReviewedJob"
import { draftSignature, type SigningRole } from "../../../review/signing"
import type { JobReviewProps } from "./ReviewProps"
import type { DeskJob } from "./useReviewedJob"

const told: Record<Change["do"], string> = {
  value: "Put on record.",
  sentence: "The sentence and its values are on record.",
  withdraw: "Taken back.",
  accept: "Yes is on record.",
  keep: "Kept, with your reason.",
  reopen: "Opened again.",
}

export interface DeskWork {
  tools: () => ChangeTools
  /** What was done or refused last, for the status line. */
  said: string
  change: (change: Change, reason: string) => Promise<Outcome>
  sign: (role: SigningRole, name: string) => Promise<Outcome>
  strike: (stretches: readonly Stretch[]) => Promise<Outcome>
}

type StrikeTools = Pick<JobReviewProps, "store" | "sound"> & { tools: () => ChangeTools }

/** Strikes one stretch, and before that opens a signed job again. Gives the log as it is then. */
const strikeOne = async (
  lines: readonly LogLine[],
  stretch: Stretch,
  given: StrikeTools,
): Promise<Outcome<LogLine[]>> => {
  const struck = strike(lines, stretch)
  if (!struck.ok) return struck
  const { left, mark, sound } = struck.value
  const additions = new Additions(project(lines), given.tools(), stretch.because)
  additions.add(mark)
  const markLine = additions.lines.at(-1)!
  const before = additions.lines.slice(0, -1)
  const opened = before.length > 0 ? await given.store.append(before) : done(undefined)
  if (!opened.ok) return opened
  const key = { job: left.job, heard: sound?.heard ?? "" }
  const silenced = sound ? await given.sound.silence(key, sound.start, sound.end) : done(undefined)
  const stored = silenced.ok ? await given.store.strike(left, markLine) : silenced
  if (!stored.ok) return stored
  return done([...lines.map((line) => (line.id === left.id ? left : line)), ...additions.lines])
}

const strikeAll = async (job: ReviewedJob, stretches: readonly Stretch[], given: StrikeTools): Promise<Outcome> => {
  let lines: readonly LogLine[] = job.lines
  for (const stretch of stretches) {
    const struck = await strikeOne(lines, stretch, given)
    if (!struck.ok) return struck
    lines = struck.value
  }
  return done(undefined)
}

export const useDeskWork = (job: ReviewedJob, desk: DeskJob, props: JobReviewProps): DeskWork => {
  const { tools, now, device, by } = props
  const [said, setSaid] = useState("")
  const changeTools = useCallback(
    (): ChangeTools => ({ interpret: tools.interpret, newId: tools.newId, at: now(), by, device }),
    [tools, now, by, device],
  )
  const tell = (outcome: Outcome, words: string): Outcome => {
    setSaid(outcome.ok ? words : outcome.because)
    return outcome
  }
  return {
    tools: changeTools,
    said,
    change: async (change, reason) => {
      const drafted = draftChange(job.record, change, reason, changeTools())
      if (!drafted.ok) return drafted
      return tell(await desk.add(drafted.value.lines), told[change.do])
    },
    sign: async (role, name) => {
      const draft = draftSignature(job, role, name)
      if (!draft.ok) return draft
      const additions = new Additions(job.record, changeTools(), "")
      additions.add(draft.value)
      return tell(await desk.add(additions.lines), "Signed.")
    },
    strike: async (stretches) => {
      const given = { ...props, tools: changeTools }
      return tell(await desk.store(() => strikeAll(job, stretches, given)), "Struck for good.")
    },
  }
}
