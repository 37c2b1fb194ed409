/** Gives a fact the part it belongs to, where its kind has one and the words left it out. */
import type { RecordedFact } from "../facts/Fact"
import type { Item } from "../facts/Item"
import { itemOf } from "../record/slotOf"

export const withSubject = (fact: RecordedFact, item: Item | null): RecordedFact =>
  item !== null && itemOf(fact) === null && "subject" in fact === false
    ? ({ ...fact, subject: item } as RecordedFact)
    : fact
