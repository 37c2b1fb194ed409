/**
 * What a kind of job holds, as data: stages in the usual order of work, each with what is wanted of which item. The plan
 * answers "what's left" and "what next"; it forces no order, and nothing in it is ever asked unasked.
 */
import { z } from "zod"
import { Arrangement } from "../facts/Fact"
import { Item } from "../facts/Item"

/** One thing still to be said: a fact kind, or `step:<step>`. */
export type Wanted = string

export const Want = z.object({
  want: z.string().regex(/^[a-z_]+(:[a-z_]+)?$/),
  /** Only with these arrangements, once one is on record. */
  when: z.array(Arrangement).optional(),
  /** Only of parts that are pipes, or that come in at one place. */
  only: z.enum(["pipes", "parts that come in"]).optional(),
})
export type Want = z.infer<typeof Want>

export const Stage = z.object({
  name: z.string().regex(/^[a-z_]+$/),
  title: z.string(),
  /** Stages that are done before this one can be the next. */
  after: z.array(z.string()).default([]),
  /** An item, or every part of one sort that was named on the job. */
  of: z.union([Item, z.enum(["each main bond", "each supplementary bond"])]),
  when: z.array(Arrangement).optional(),
  wants: z.array(Want).min(1),
})
export type Stage = z.infer<typeof Stage>

export const JobPlan = z.object({ id: z.string(), v: z.literal(1), title: z.string(), stages: z.array(Stage).min(1) })
export type JobPlan = z.infer<typeof JobPlan>
