/**
 * One line of a job's log. Lines are added and read, never changed: a correction is a new entry in the same slot, and
 * what was taken back is a line of its own. Each stored shape carries its version `v`.
 */
import { z } from "zod"
import { RecordedFact } from "../facts/Fact"
import { Severity } from "../facts/Finding"
import { Heard } from "../facts/Heard"
import { Ask } from "../facts/Interpretation"
import { Item } from "../facts/Item"

const stamp = {
  v: z.literal(1),
  /** UUIDv7. */
  id: z.string().min(1),
  job: z.string().min(1),
  at: z.iso.datetime({ offset: true }),
  /** Who added it: a person's role, or "app". */
  by: z.string().min(1),
  device: z.string().min(1),
  /** Position in the job's log on this device, from 0, without gaps. */
  seq: z.number().int().nonnegative(),
}
/** Who writes as `by` at a desk and not on the job. */
export const officeRoles: readonly string[] = ["office"]

const line = <Type extends string, Shape extends z.ZodRawShape>(type: Type, shape: Shape) =>
  z.object({ ...stamp, type: z.literal(type), ...shape })

/** Where a value came from: the utterances that led to it, or a hand on the screen. */
export const Origin = z.discriminatedUnion("by", [
  z.object({
    by: z.literal("voice"),
    heard: z.array(z.string()).min(1),
    /** Why a sentence was typed anew at the desk. */
    reason: z.string().max(500).optional(),
  }),
  z.object({ by: z.literal("hand"), reason: z.string() }),
])
export type Origin = z.infer<typeof Origin>

/** How an entry came to be accepted. */
export const AcceptedHow = z.enum(["said_yes", "not_challenged", "tapped"])
export type AcceptedHow = z.infer<typeof AcceptedHow>

/** `missed`: asked again with no answer to the first asking; `alarm`: no answer to that either. */
export const CheckInState = z.enum(["set", "asked", "answered", "missed", "alarm", "stopped"])
export type CheckInState = z.infer<typeof CheckInState>

/** A finding that stood when somebody signed; `kept` is the reason for which it was left as it is. */
export const SignedFinding = z.object({
  rule: z.string(),
  item: Item.optional(),
  severity: Severity,
  words: z.string(),
  kept: z.string().optional(),
})
export type SignedFinding = z.infer<typeof SignedFinding>

const hash = z.string().regex(/^[0-9a-f]{64}$/)

export const LogLine = z.discriminatedUnion("type", [
  line("job_opened", {
    place: z.string().min(1).max(200),
    pack: z.string(),
    caution: z.string(),
    /** The job that this is a second copy of, where two devices carried on with one job. */
    copyOf: z.string().optional(),
  }),
  line("heard", { heard: Heard }),
  line("entry", { fact: RecordedFact, origin: Origin, replaces: z.string().optional(), needsYes: z.boolean() }),
  line("accepted", { entry: z.string(), how: AcceptedHow }),
  line("withdrawn", {
    entry: z.string(),
    because: z.enum(["denied", "undone", "started_over"]),
    reason: z.string().max(500).optional(),
  }),
  line("asked", { ask: Ask, item: Item.optional(), heard: z.string().optional() }),
  line("said", { words: z.string(), warns: z.array(z.string()).default([]) }),
  line("answered", { warning: z.string(), how: z.string() }),
  line("kept", { warning: z.string(), reason: z.string().min(1).max(500) }),
  /** A check-in of a worker who is alone; `every` in minutes where it is set. */
  line("check_in", { state: CheckInState, every: z.number().int().positive().optional() }),
  /** The device's clock went back: lines from here on are later than their times say. `seq` keeps the order. */
  line("clock_back", { before: z.iso.datetime({ offset: true }) }),
  line("signed_off", {
    /** "worker", who did the work, or "reviewer". */
    role: z.string().min(1),
    /** What was left open, as it was said aloud; empty when nothing was. */
    undone: z.array(z.string()).default([]),
    /** As the person typed it; nothing checks it. */
    name: z.string().min(1).max(120).optional(),
    /** What was signed: all lines up to the one with this hash of the job file's chain. */
    over: hash.optional(),
    findings: z.array(SignedFinding).optional(),
  }),
  /** The worker left the job; any later line means that it was taken up again. */
  line("put_away", {}),
  line("reopened", { because: z.string() }),
  /**
   * A private stretch was taken out of the words of the line `of`. `before` and `link` are the hashes of the job file's
   * chain around the line as it first was, so that the chain goes on past it; `left` is the hash of what is left of it.
   */
  line("struck", {
    of: z.string(),
    /** Characters of the words as it stood before, the second not included. */
    from: z.number().int().nonnegative(),
    to: z.number().int().positive(),
    because: z.string().min(1).max(500),
    before: hash,
    link: hash,
    left: hash,
  }),
])
export type LogLine = z.infer<typeof LogLine>

/** A line before it is stamped with its id, time, author and place in the log. */
export type Draft<Line = LogLine> = Line extends LogLine ? Omit<Line, keyof typeof stamp> : never
