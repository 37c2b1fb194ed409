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

const signs: Partial<Record<string, string>> = { mm2: "mm²", ohm: "Ω" }

/** The unit of a kind as it is written beside a figure: "mm²", "Ω"; empty where it has none. */
export const unitSign = (kind: string): string => {
  const unit = unitFor(kind) ?? ""
  return signs[unit] ?? unit
}
