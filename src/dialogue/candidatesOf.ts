/** What a doubt may have been, as facts of the part that it is about. */
import { RecordedFact } from "../facts/Fact"
import type { Ask } from "../facts/Interpretation"
import type { Item } from "../facts/Item"
import { unitFor } from "../facts/unitOf"
import { withSubject } from "./withSubject"

/** The likeliest first. Candidates that are no value of their kind are left out. */
export const candidatesOf = (ask: Ask, item: Item | null): RecordedFact[] =>
  (ask.candidates ?? []).flatMap((value) => {
    const unit = unitFor(ask.kind)
    const parsed = RecordedFact.safeParse({ kind: ask.kind, value, ...(unit && { unit }) })
    return parsed.success ? [withSubject(parsed.data, item)] : []
  })
