/**
 * One typed claim found in what was said. These shapes are the contract between the ear's words and everything after
 * them; their field names are also the tags in `grammars/`.
 */
import { z } from "zod"
import { Item } from "./Item"
import { Qualifier, sizesMm2 } from "./Quantity"

const Size = z.number().refine((mm2) => (sizesMm2 as readonly number[]).includes(mm2), "not a size that is sold")
const subject = { subject: Item.optional() }

/** Size of a bond or of the earthing conductor. */
export const ConductorCsa = z.object({
  kind: z.literal("conductor_csa"),
  value: Size,
  unit: z.literal("mm2"),
  ...subject,
})

/** Size of the supply neutral, as copper equivalent, which decides the bonds of a PME supply. */
export const NeutralCsa = z.object({ kind: z.literal("neutral_csa"), value: Size, unit: z.literal("mm2") })

/** The part the next facts are about. */
export const Service = z.object({ kind: z.literal("service"), value: Item })

/** Length of a conductor. */
export const Length = z.object({
  kind: z.literal("length"),
  value: z.number().positive().max(1000),
  unit: z.literal("m"),
  ...subject,
})

/** How far the clamp is from the meter, the stop valve or the point of entry. */
export const Distance = z.object({
  kind: z.literal("distance"),
  value: z.number().nonnegative().max(100_000),
  unit: z.literal("mm"),
  qualifier: Qualifier.optional(),
  ...subject,
})

/** What the meter showed. Over range without a limit is `value: null, qualifier: ">"`, never a number. */
export const Resistance = z
  .object({
    kind: z.literal("resistance"),
    value: z.number().nonnegative().nullable(),
    unit: z.literal("ohm"),
    qualifier: Qualifier.optional(),
    ...subject,
  })
  .refine((fact) => fact.value !== null || fact.qualifier === ">", "only an over-range reading may lack a value")

/** How the supply provides its earth. */
export const Arrangement = z.enum(["TN-S", "TN-C-S", "TT"])
export type Arrangement = z.infer<typeof Arrangement>
export const EarthingArrangement = z.object({ kind: z.literal("earthing_arrangement"), value: Arrangement })

/** Rating of the supply fuse. */
export const FuseRating = z.object({
  kind: z.literal("fuse_rating"),
  value: z.number().positive(),
  unit: z.literal("A"),
})

/** Polarity of the supply. */
export const Polarity = z.object({ kind: z.literal("polarity"), value: z.enum(["correct", "reversed"]) })

/** The steps a worker can say are done. */
export const Step = z.enum([
  "risk_checked",
  "survey_done",
  "tester_proved_before",
  "isolated_proved_dead",
  "tester_proved_after",
  "working_live",
  "terminal_fitted",
  "terminal_labelled",
  "conductor_run",
  "pipe_cleaned",
  "clamp_fitted",
  "label_fitted",
  "leads_nulled",
  "one_end_disconnected",
  "connected_to_met",
  "connections_checked",
  "handed_over",
])
export type Step = z.infer<typeof Step>
export const StepDone = z.object({ kind: z.literal("step_done"), value: Step, ...subject })

/**
 * What looking at a part showed: that it needs a bond or none, that it is not metal where it comes in, or that there is
 * none here. With any but the first, nothing more is wanted of that part.
 */
export const Survey = z.enum(["needs_bond", "needs_no_bond", "plastic_at_entry", "not_here"])
export type Survey = z.infer<typeof Survey>
export const Surveyed = z.object({ kind: z.literal("survey"), value: Survey, ...subject })

/** Free words to keep with the job or an item. */
export const Note = z.object({ kind: z.literal("note"), value: z.string().min(1).max(2000), ...subject })

/** A time of day (HH:MM) or a date (YYYY-MM-DD). */
export const Time = z.object({ kind: z.literal("time"), value: z.string(), unit: z.enum(["time", "date"]) })

/** Facts that become entries on the record. */
export const RecordedFact = z.discriminatedUnion("kind", [
  ConductorCsa,
  NeutralCsa,
  Service,
  Length,
  Distance,
  Resistance,
  EarthingArrangement,
  FuseRating,
  Polarity,
  StepDone,
  Surveyed,
  Note,
  Time,
])
export type RecordedFact = z.infer<typeof RecordedFact>

/** A repair of what was just read back; `field` is the kind of the fact it repairs. */
export const Correct = z.object({
  kind: z.literal("correct"),
  field: z.string(),
  value: z.union([z.number(), z.string(), z.null()]),
  unit: z.enum(["mm2", "m", "mm", "ohm", "A", "time", "date"]).optional(),
  qualifier: Qualifier.optional(),
  ...subject,
})
export type Correct = z.infer<typeof Correct>

/** Answers to the app: they steer the loop and never stand on the record themselves. */
export const Answer = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("confirm"), value: z.literal(true) }),
  z.object({ kind: z.literal("deny"), value: z.literal(true), ...subject }),
  /** `count`: how many entries, one where it was not said. */
  z.object({ kind: z.literal("undo"), value: z.literal(true), count: z.number().int().min(1).max(99).optional() }),
  z.object({ kind: z.literal("repeat"), value: z.literal(true) }),
  z.object({ kind: z.literal("skip"), value: z.literal(true), ...subject }),
  Correct,
])
export type Answer = z.infer<typeof Answer>

/** Anything `interpret` may claim was said. */
export const Fact = z.union([RecordedFact, Answer])
export type Fact = z.infer<typeof Fact>
export type FactKind = Fact["kind"]
