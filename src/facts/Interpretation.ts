/** What `interpret` is told and what it answers: the contract in the middle of the product. */
import { z } from "zod"
import { Fact, RecordedFact } from "./Fact"
import { Item } from "./Item"

/** What was asked, which item is current, what was just read back, and the local time: all that may bend a meaning. */
export const Context = z.object({
  /** The open question: a fact kind, `step:<step>`, `service`, `service_present:<item>`, `confirm`, or a time's name. */
  asked: z.string().optional(),
  item: Item.optional(),
  /** The fact just read back, which waits for a yes or a no. */
  readback: RecordedFact.optional(),
  /** The value was asked for digit by digit, or offered so: "one nine" is nineteen and not two numbers that ran together. */
  digits: z.boolean().optional(),
  /** What the ear made of words that the worker then said no to, lately and in this place. */
  misheard: z.array(z.string()).optional(),
  /** Parts that the worker named himself on this job: their names are understood as any other part's. */
  named: z.array(Item).optional(),
  /** Local time, ISO 8601. Only times and dates look at it. */
  now: z.string().optional(),
})
export type Context = z.infer<typeof Context>

/** A question back: the kind in doubt, what it may have been, and why it is in doubt. */
export const Ask = z.object({
  kind: z.string(),
  candidates: z.array(z.union([z.number(), z.string()])).optional(),
  because: z.string(),
  /** The value that was read back, said as a repair of itself: whatever was meant, it was not that. Never stored. */
  isSameAgain: z.boolean().optional(),
  /** Where a part is asked for: what was plainly said and belongs to it, without a subject. It is never written as it is. */
  values: z.array(RecordedFact).optional(),
})
export type Ask = z.infer<typeof Ask>

/** Minutes between two check-ins that a worker may choose. What is right follows from his own risk assessment. */
export const EveryMinutes = z.number().int().min(1).max(240)

/** The screens of a job, as they can be asked for. */
export const screens = ["now", "picture", "record", "findings", "sign-off", "settings"] as const
export type Screen = (typeof screens)[number]

/** What of a job can be handed to the device as a file. */
export const savedFiles = ["job file", "report"] as const
export type SavedFile = (typeof savedFiles)[number]

/** A wish that writes nothing: it only makes the app say or do something. */
export const Command = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("whats_left"), subject: Item.optional() }),
  z.object({ kind: z.literal("read_all_back") }),
  z.object({ kind: z.literal("what_size"), subject: Item.optional() }),
  z.object({ kind: z.literal("what_should_it_read"), subject: Item.optional() }),
  z.object({ kind: z.literal("how_long"), subject: Item.optional() }),
  z.object({ kind: z.literal("what_did_i_say"), subject: Item.optional() }),
  z.object({ kind: z.literal("keep_it"), reason: z.string() }),
  z.object({ kind: z.literal("whats_next") }),
  /** Goes on with, or ends, a read-back that goes page by page. */
  z.object({ kind: z.literal("read_on") }),
  z.object({ kind: z.literal("stop_reading") }),
  z.object({ kind: z.literal("louder") }),
  z.object({ kind: z.literal("quieter") }),
  z.object({ kind: z.literal("slower") }),
  z.object({ kind: z.literal("faster") }),
  z.object({ kind: z.literal("verbosity"), value: z.enum(["full", "short", "warnings"]) }),
  /** Takes back everything that was said of a part, once a yes is given. */
  z.object({ kind: z.literal("start_over"), subject: Item.optional() }),
  z.object({ kind: z.literal("check_on_me"), everyMinutes: EveryMinutes.optional() }),
  z.object({ kind: z.literal("stop_checking") }),
  /** An answer to a check-in that is nothing else: "I'm all right". */
  z.object({ kind: z.literal("all_right") }),
  /** A smell of gas was reported: nothing is written, and what to do is said at once. */
  z.object({ kind: z.literal("smells_gas") }),
  z.object({ kind: z.literal("sign_off") }),
  z.object({ kind: z.literal("put_away") }),
  z.object({ kind: z.literal("show"), screen: z.enum(screens) }),
  z.object({ kind: z.literal("save"), what: z.enum(savedFiles) }),
  z.object({ kind: z.literal("stop_listening") }),
  z.object({ kind: z.literal("start_listening") }),
])
export type Command = z.infer<typeof Command>

export const Interpretation = z.object({
  /** Only what may be written, or answers to the app. */
  facts: z.array(Fact),
  ask: Ask.nullable(),
  command: Command.nullable(),
})
export type Interpretation = z.infer<typeof Interpretation>
