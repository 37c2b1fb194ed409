/** The conductor to buy when a sum asks for an odd area: the next size that is sold, never the nearest. */
import { sizesMm2 } from "../facts/Quantity"

/** Least sold size that is not under `mm2`; null above the largest. */
export const nextSizeUp = (mm2: number): number | null => sizesMm2.find((size) => size >= mm2) ?? null
