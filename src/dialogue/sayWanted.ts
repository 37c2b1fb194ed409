/** What a plan wants, in words to be put after the name of its item. */
import type { Step } from "../facts/Fact"
import type { Item } from "../facts/Item"
import { sayNumber } from "../facts/sayNumber"
import { sayItem } from "../interpret/sayItem"
import { sayKind } from "../interpret/sayKind"
import { sayStep } from "../interpret/sayStep"
import { capital } from "./capital"
import type { Wanted } from "./JobPlan"

/** Readings that have a name of their own. */
const readings: Readonly<Record<Item, string>> = { supply: "loop impedance", test_leads: "open leads check" }

export const sayWanted = (item: Item, wanted: Wanted): string => {
  if (wanted.startsWith("step:")) return sayStep(wanted.slice(5) as Step)
  return wanted === "resistance" ? (readings[item] ?? sayKind(wanted)) : sayKind(wanted)
}

/** "Water: length, pipe cleaned and five more." `most` is how many are named. */
export const sayAllWanted = (item: Item, wanted: readonly Wanted[], most: number): string => {
  const named = wanted.slice(0, wanted.length === most + 1 ? most + 1 : most).map((one) => sayWanted(item, one))
  const more = wanted.length - named.length
  return `${capital(sayItem(item))}: ${named.join(", ")}${more > 0 ? `, and ${sayNumber(more)} more` : ""}.`
}
