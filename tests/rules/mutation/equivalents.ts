/** Changes that cannot be told from the original, or that only move how a number is printed, with the reason. */
import type { Mutant } from "./Mutant"

export interface Equivalent {
  because: string
  matches(mutant: Mutant): boolean
}

export const equivalents: readonly Equivalent[] = []
