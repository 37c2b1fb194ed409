/**
 * The job on the desk: read from the store, checked, and read again after each addition. Nothing is shown that is not
 * stored: what the store refused leaves the job as it was, and says why.
 */
import { useCallback, useEffect, useState } from "react"
import type { Outcome } from "../../../facts/Outcome"
import type { LogLine } from "../../../record/LogLine"
import type { Source } from "../../../record/Source"
import { type ReviewedJob, reviewJob } from "../../../review/ReviewedJob"
import type { Desk } from "../Desk"

export interface OnDesk {
  job: ReviewedJob
  /** The files that lines were taken in from. */
  sources: readonly Source[]
}

export interface DeskJob {
  /** `none`: no such job is stored here. */
  found: OnDesk | "reading" | "failed" | "none"
  /** Carries out something with the store, then reads the job again. */
  store: (work: () => Promise<Outcome>) => Promise<Outcome>
  add: (lines: readonly LogLine[]) => Promise<Outcome>
}

const readJob = async ({ store, tools }: Pick<Desk, "store" | "tools">, id: string): Promise<OnDesk | "none"> => {
  const [{ lines, damaged }, sources] = await Promise.all([store.read(id), store.sources(id)])
  if (lines.length === 0 && damaged === 0) return "none"
  const faults = [...new Set(sources.flatMap((source) => source.faults))]
  return { job: reviewJob({ lines, damaged, faults }, (situation) => tools.check(situation)), sources }
}

export const useReviewedJob = (desk: Desk, id: string): DeskJob => {
  const [found, setFound] = useState<DeskJob["found"]>("reading")
  const { store, tools } = desk
  const read = useCallback(async () => {
    try {
      setFound(await readJob({ store, tools }, id))
    } catch {
      setFound("failed")
    }
  }, [store, tools, id])
  useEffect(() => void read(), [read])
  const { watch } = desk
  useEffect(() => watch?.((jobs) => (jobs.includes(id) ? void read() : undefined)), [watch, id, read])
  const carryOut = useCallback(
    async (work: () => Promise<Outcome>) => {
      const outcome = await work()
      await read()
      return outcome
    },
    [read],
  )
  const add = useCallback((lines: readonly LogLine[]) => carryOut(() => store.append(lines)), [carryOut, store])
  return { found, store: carryOut, add }
}
