/**
 * Quantities that may not be mixed up: a cross-section, a length, a distance, a resistance and a current are each a type
 * of their own, although all are plain numbers on disk.
 */
import { z } from "zod"

/** The conductor sizes the trade can buy, in mm². Anything else said as a size is asked about. */
export const sizesMm2 = [1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150, 185, 240] as const

/** Cross-section of a conductor in mm². */
export const Mm2 = z.number().positive().brand<"mm2">()
export type Mm2 = z.infer<typeof Mm2>

/** Length of a conductor in metres. */
export const Metres = z.number().positive().brand<"m">()
export type Metres = z.infer<typeof Metres>

/** How far a clamp sits from what it is measured from, in millimetres. */
export const Millimetres = z.number().nonnegative().brand<"mm">()
export type Millimetres = z.infer<typeof Millimetres>

/** Resistance in ohms. Over range is never a number of ohms: see `Resistance`. */
export const Ohms = z.number().nonnegative().brand<"ohm">()
export type Ohms = z.infer<typeof Ohms>

/** Current in amperes. */
export const Amperes = z.number().positive().brand<"A">()
export type Amperes = z.infer<typeof Amperes>

/** How a value was limited when it was said: more than, less than, no more than. */
export const Qualifier = z.enum([">", "<", "<="])
export type Qualifier = z.infer<typeof Qualifier>
