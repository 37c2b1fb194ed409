/**
 * What holds on a job right now, in plain values: the only thing rules look at. Every value carries the entry it came
 * from, so that a finding can name its origins.
 */
import { z } from "zod"
import { Arrangement, Step } from "./Fact"
import { Item } from "./Item"
import { Amperes, Metres, Millimetres, Mm2, Ohms, Qualifier } from "./Quantity"

/** `order` is the place in the log, higher for what came later; without it nobody can tell what came first. */
const known = <T extends z.ZodType>(value: T) =>
  z.object({ value, entry: z.string(), order: z.number().int().optional() })

/** One item's values. `reading` says under which conditions it was taken, as far as they were said. */
export const ItemSituation = z.object({
  item: Item,
  csaMm2: known(Mm2).optional(),
  lengthM: known(Metres).optional(),
  distanceMm: known(Millimetres).extend({ qualifier: Qualifier.optional() }).optional(),
  reading: z
    .object({
      ohms: Ohms.nullable(),
      qualifier: Qualifier.optional(),
      entry: z.string(),
      /** Whether leads had been said to be nulled, and one end disconnected, before this reading. */
      leadsNulled: z.boolean(),
      oneEndDisconnected: z.boolean(),
    })
    .optional(),
  steps: z.partialRecord(Step, known(z.literal(true))).default({}),
  /** How the part comes in, as far as it was found out: decides whether it needs a bond at all. */
  atEntry: z
    .object({
      insulatingSection: known(z.boolean()).optional(),
      /** To the main earthing terminal, with the supply isolated and parallel paths taken off. */
      toMetOhms: known(Ohms).optional(),
    })
    .optional(),
  /** Of a supplementary bond: what it joins, and what protects it. */
  joins: z
    .object({
      between: known(z.enum(["two exposed", "exposed and extraneous", "two extraneous"])).optional(),
      protectiveMm2: known(Mm2).optional(),
      mechanicallyProtected: known(z.boolean()).optional(),
    })
    .optional(),
})
export type ItemSituation = z.infer<typeof ItemSituation>

/** How well the low-resistance meter measures. An assumption until the worker sets it from the instrument's own sheet. */
export const Instrument = z.object({
  percent: z.number().min(0).max(30),
  digits: z.number().int().min(0).max(20),
  digitOhms: z.number().positive(),
  assumed: z.boolean(),
})
export type Instrument = z.infer<typeof Instrument>

export const Situation = z.object({
  supply: z.object({
    arrangement: known(Arrangement).optional(),
    neutralMm2: known(Mm2).optional(),
    fuseA: known(Amperes).optional(),
    polarity: known(z.enum(["correct", "reversed"])).optional(),
    /** Size of the line conductor of the supply (the tails). */
    lineMm2: known(Mm2).optional(),
    /** External loop impedance. */
    zeOhms: known(Ohms).optional(),
    /** Prospective fault current in thousands of amperes, and of how many phases. */
    faultKa: known(z.number().positive()).optional(),
    phases: known(z.union([z.literal(1), z.literal(3)])).optional(),
    /** Rated residual current of the device that protects by cutting off, in milliamperes. */
    residualMa: known(z.number().positive()).optional(),
  }),
  /** How the earthing conductor runs. */
  earthing: z
    .object({
      buried: known(z.boolean()).optional(),
      corrosionProtected: known(z.boolean()).optional(),
      mechanicallyProtected: known(z.boolean()).optional(),
    })
    .optional(),
  /** In the order they were first named. */
  items: z.array(ItemSituation),
  leadsNulled: known(z.literal(true)).optional(),
  isolatedProvedDead: known(z.literal(true)).optional(),
  /** The worker said that he works near live parts with nobody there. */
  workingLive: known(z.literal(true)).optional(),
  instrument: Instrument,
})
export type Situation = z.infer<typeof Situation>
