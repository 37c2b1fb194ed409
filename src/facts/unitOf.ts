/** The unit that each measured kind of fact is kept in. */
import type { FactKind } from "./Fact"

export const unitOf = {
  conductor_csa: "mm2",
  neutral_csa: "mm2",
  length: "m",
  distance: "mm",
  resistance: "ohm",
  fuse_rating: "A",
} as const satisfies Partial<Record<FactKind, string>>

/** The unit of a kind, or undefined where it has none. */
export const unitFor = (kind: string): string | undefined => (unitOf as Partial<Record<string, string>>)[kind]
