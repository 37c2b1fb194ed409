/** Several facts read back in one breath: the part is named once, then what was said of it. */
import type { RecordedFact } from "../facts/Fact"
import type { Item } from "../facts/Item"
import { readBack } from "../interpret/readBack"
import { sayItem } from "../interpret/sayItem"
import { itemOf } from "../record/slotOf"
import { capital } from "./capital"

/** The loop of the supply is a reading whose own words name it. */
const isSupplyLoop = (fact: RecordedFact) => fact.kind === "resistance" && fact.subject === "supply"

/** The fact without the part it belongs to, to be said beside its name. */
export const withoutSubject = (fact: RecordedFact): RecordedFact => {
  if (!("subject" in fact) || isSupplyLoop(fact)) return fact
  const { subject: _, ...rest } = fact
  return rest as RecordedFact
}

/** "Water. Sixteen square. Fourteen metres." */
export const sayFacts = (facts: readonly RecordedFact[]): string => {
  const words: string[] = []
  let named: string | null = null
  // A part of which something is said further on is named there.
  const isNamedLater = (part: Item, at: number) => facts.slice(at + 1).some((one) => itemOf(one) === part)
  for (const [at, fact] of facts.entries()) {
    if (fact.kind === "service" && isNamedLater(fact.value, at)) continue
    const isNamed = ("subject" in fact && !isSupplyLoop(fact)) || fact.kind === "service"
    const item = isNamed ? itemOf(fact) : null
    if (item !== null && item !== named) words.push(`${capital(sayItem(item))}.`)
    named = item ?? named
    if (fact.kind !== "service") words.push(readBack(withoutSubject(fact)))
  }
  return words.map((word) => (/[.?!]$/.test(word) ? word : `${word}.`)).join(" ")
}
