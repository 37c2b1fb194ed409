/** Questions about sizes and readings that stand on their own, without a job. Units are in the names. */
import { z } from "zod"
import { protectiveDevices } from "./maxZsOhms"

const positive = z.number().positive()
const metal = z
  .enum(["copper", "aluminium", "Cu", "Al"])
  .transform((name) => (name === "Al" || name === "aluminium" ? "aluminium" : "copper"))
/** PME is the trade's name for the British form of TN-C-S. */
const arrangement = z
  .enum(["TN-S", "TN-C-S", "TT", "PME"])
  .transform((name): "TN-S" | "TN-C-S" | "TT" => (name === "PME" ? "TN-C-S" : name))

export const SizeQuestion = z.discriminatedUnion("ask", [
  z.strictObject({
    ask: z.literal("main_bond"),
    arrangement,
    neutral_mm2: positive.optional(),
    earthing_conductor_mm2: positive.optional(),
    /** False: the neutral is aluminium and is turned into copper first. A number: the copper size itself. */
    copper_equivalent: z.union([z.boolean(), positive]).default(true),
  }),
  z.strictObject({
    ask: z.literal("earthing_conductor"),
    line_mm2: positive.optional(),
    fault_a: positive.optional(),
    seconds: positive.optional(),
    k: positive.optional(),
    buried: z.boolean().optional(),
    corrosion_protected: z.boolean().optional(),
    mechanically_protected: z.boolean().optional(),
    metal: z.enum(["copper", "steel"]).optional(),
    /** Given for a PME supply: the copper-equivalent neutral. */
    neutral_mm2: positive.optional(),
    arrangement: arrangement.optional(),
  }),
  z.strictObject({
    ask: z.literal("expected_ohms"),
    csa_mm2: positive,
    length_m: positive,
    material: metal.default("copper"),
    conductor_class: z.union([z.literal(1), z.literal(2), z.literal(5)]).default(2),
    temperature_c: z.number().optional(),
  }),
  z.strictObject({
    ask: z.literal("longest_run"),
    csa_mm2: positive,
    ohms: positive,
    material: metal.default("copper"),
    conductor_class: z.union([z.literal(1), z.literal(2), z.literal(5)]).default(2),
  }),
  z.strictObject({ ask: z.literal("adiabatic"), fault_a: positive, seconds: positive, k: positive }),
  z.strictObject({
    ask: z.literal("temperature"),
    ohms: z.number().nonnegative(),
    from_c: z.number(),
    to_c: z.number(),
    alpha: positive.optional(),
  }),
  z.strictObject({
    ask: z.literal("extraneous"),
    milliamps: positive,
    body_ohms: z.number().nonnegative().optional(),
    volts: positive.optional(),
  }),
  z.strictObject({
    ask: z.literal("supplementary"),
    operating_a: positive.optional(),
    residual_ma: positive.optional(),
  }),
  z.strictObject({ ask: z.literal("electrode"), residual_ma: positive }),
  z.strictObject({
    ask: z.literal("max_zs"),
    device: z.enum(protectiveDevices),
    rating_a: positive,
    seconds: positive.optional(),
  }),
  z.strictObject({
    ask: z.literal("zs"),
    ze: z.number().nonnegative(),
    r1_r2: z.number().nonnegative(),
    warm_factor: positive.optional(),
  }),
  z.strictObject({
    ask: z.literal("r1_r2"),
    line_mm2: positive,
    cpc_mm2: positive,
    length_m: positive,
    temperature_c: z.number().optional(),
    material: metal.default("copper"),
  }),
])
export type SizeQuestion = z.infer<typeof SizeQuestion>
export type SizeAsk = SizeQuestion["ask"]
export type Asked<Ask extends SizeAsk> = Extract<SizeQuestion, { ask: Ask }>

/** What comes back: the figure, how it was worked out, and how well it is known. */
export interface SizeAnswer {
  value: number
  unit: string
  because: string
  clause: string
  status: "direct" | "derived" | "memory"
}
