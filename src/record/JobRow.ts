/**
 * One job as the list of all jobs needs it. Rows are kept beside the logs so that nobody has to read ten thousand logs
 * to find one job; a row is only ever a shortened log and can be made anew from it at any time.
 */
import { z } from "zod"
import { Arrangement } from "../facts/Fact"
import { Item } from "../facts/Item"
import { Qualifier } from "../facts/Quantity"

/** What holds for one part of the job: the values that people look for. */
export const PartRow = z.object({
  item: Item,
  mm2: z.number().optional(),
  lengthM: z.number().optional(),
  clampMm: z.number().optional(),
  /** Null is over range without a limit. */
  ohms: z.number().nullable().optional(),
  /** How the reading was limited when it was said. */
  limit: Qualifier.optional(),
})
export type PartRow = z.infer<typeof PartRow>

export const JobRow = z.object({
  job: z.string(),
  place: z.string(),
  openedAt: z.string(),
  lastAt: z.string(),
  lines: z.number().int(),
  /** False once the worker has put the job away. */
  inHand: z.boolean(),
  signedOff: z.boolean(),
  /** The job that this is a second copy of: another device carried on with it. */
  copyOf: z.string().optional(),
  supply: z.object({ arrangement: Arrangement.optional(), neutralMm2: z.number().optional() }),
  parts: z.array(PartRow),
  /** Open stops and warnings, warnings kept with a reason, and values that wait for a yes. */
  stops: z.number().int(),
  warns: z.number().int(),
  kept: z.number().int(),
  awaiting: z.number().int(),
  /** Values out of what was heard that nobody has said yes to or let pass. */
  unseen: z.number().int(),
  /** Every word that was said, once each, in lower case, with a space between. */
  words: z.string(),
})
export type JobRow = z.infer<typeof JobRow>
