/**
 * Which values may be asked for digit by digit. "Nineteen" that came out as "ninety" comes out so the next time as well,
 * while "one nine" and "nine oh" share nothing. Readings are digits as they are, and there are few sizes.
 */
import type { RecordedFact } from "../facts/Fact"
import type { Item } from "../facts/Item"
import { sayItem } from "../interpret/sayItem"
import { sayKind } from "../interpret/sayKind"
import { capital } from "./capital"

/** The slot of a measured field, as `slotOf` names it. */
export const slotNamed = (kind: string, item: Item | null): string => `${item ?? "nowhere"}/${kind}`

/** `value`: one that it was taken for. A resistance is only spelled where it is of whole ohms. */
export const canBeSpelled = (kind: string, value: unknown): boolean =>
  kind === "length" ||
  kind === "distance" ||
  (kind === "resistance" && typeof value === "number" && Number.isInteger(value) && value >= 10)

/** "Water. Say the length digit by digit." */
export const sayToSpell = (kind: string, item: Item | null): string => {
  const name = item ? `${capital(sayItem(item))}. ` : ""
  return `${name}Say the ${sayKind(kind)} digit by digit.`
}

/** Whether one of the values was taken for one that can be spelled. */
export const haveDigits = (kind: string, facts: readonly Pick<RecordedFact, "value">[]): boolean =>
  facts.some((fact) => canBeSpelled(kind, fact.value))
