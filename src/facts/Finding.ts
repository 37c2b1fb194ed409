/** What a rule says about the record. Made by `rules/`, spoken by the dialogue, shown and exported with its source. */
import { z } from "zod"
import { Item } from "./Item"

/** How well a figure is known: seen in public, derived from one that is, or only remembered. */
export const Status = z.enum(["direct", "derived", "memory"])
export type Status = z.infer<typeof Status>

export const Source = z.object({ standard: z.string(), edition: z.string(), clause: z.string() })
export type Source = z.infer<typeof Source>

/** `stop`: danger or plain breach. `warn`: looks wrong. `note`: worth knowing. `ok`: passes. */
export const Severity = z.enum(["stop", "warn", "note", "ok"])
export type Severity = z.infer<typeof Severity>

/** How a finding was worked out: the table row it used, the formula, the same with numbers in, and the result. */
export const Working = z.object({
  row: z.string().optional(),
  formula: z.string(),
  numbers: z.string(),
  result: z.string(),
})
export type Working = z.infer<typeof Working>

export const Finding = z.object({
  /** The rule's name. */
  rule: z.string(),
  item: Item.optional(),
  severity: Severity,
  /** Tells findings of one rule apart, such as "below" and "above" a band. */
  which: z.string().optional(),
  /** One short sentence fit to be spoken: the value, the limit, what to do. */
  spoken: z.string(),
  /** One longer one for the screen, with the sum worked out. */
  shown: z.string(),
  source: Source,
  status: Status,
  /** The entries it rests on, in a stable order. A kept finding comes back when one of these changes. */
  rests: z.array(z.string()),
  /** The named inputs the sum was worked out with, units in the names. */
  inputs: z.record(z.string(), z.union([z.number(), z.string(), z.boolean(), z.null()])).default({}),
  working: Working.optional(),
})
export type Finding = z.infer<typeof Finding>

/** Something a rule would need to know before it can say anything. */
export const Missing = z.object({ rule: z.string(), item: Item.optional(), kind: z.string() })
export type Missing = z.infer<typeof Missing>

export const Checked = z.object({ findings: z.array(Finding), missing: z.array(Missing) })
export type Checked = z.infer<typeof Checked>
