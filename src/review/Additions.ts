/**
 * Lines that the desk is about to add, with the record as it would be after each. Nothing is stored by it: a preview and
 * the real thing are made by the same code, and only the latter is handed to the store.
 */
import type { JobRecord } from "../record/JobRecord"
import type { Draft, LogLine } from "../record/LogLine"
import { applyLine } from "../record/project"
import { reopeningFor } from "../record/reopening"
import { stampLine } from "../record/stampLine"

export interface Stamp {
  at: string
  by: string
  device: string
  newId(): string
}

export class Additions {
  readonly lines: LogLine[] = []

  constructor(
    public record: JobRecord,
    private readonly stamp: Stamp,
    /** Why it is done; stands in the line that opens a signed job again. */
    private readonly reason: string,
  ) {}

  /** Adds a line, and before it one that opens a signed job again. Gives the line's id. */
  add(draft: Draft): string {
    const reopening = reopeningFor(this.record, draft, this.reason)
    if (reopening) this.push(reopening)
    return this.push(draft)
  }

  private push(draft: Draft): string {
    const { at, by, device } = this.stamp
    const id = this.stamp.newId()
    const { job, nextSeq } = this.record
    const line = stampLine(draft, { id, job: job ?? "", at, by, device, seq: nextSeq })
    this.lines.push(line)
    this.record = applyLine(this.record, line)
    return id
  }
}
