/** What stands in the fields while a value is changed by hand, and its way back to a fact. */
import { RecordedFact } from "../../facts/Fact"
import { done, type Outcome, refuse } from "../../facts/Outcome"
import { showFact } from "./showFact"

export interface Draft {
  text: string
  /** Only for readings: the meter showed over range, and `text` is its limit or empty. */
  overRange: boolean
}

/** The fact as it stands, to start from. */
export const draftOf = (fact: RecordedFact): Draft => ({
  text: fact.value === null ? "" : String(fact.value),
  overRange: fact.kind === "resistance" && fact.qualifier === ">",
})

/** Whether the value of a fact is a number. */
export const isNumeric = (fact: RecordedFact): boolean => "unit" in fact && fact.kind !== "time"

const numberOf = (text: string): number | null => (/^\d+([.,]\d+)?$/.test(text) ? Number(text.replace(",", ".")) : null)

const readingOf = (fact: Extract<RecordedFact, { kind: "resistance" }>, draft: Draft): RecordedFact | null => {
  const { qualifier: _, ...rest } = fact
  const ohms = numberOf(draft.text.trim())
  if (draft.overRange) return draft.text.trim() && ohms === null ? null : { ...rest, value: ohms, qualifier: ">" }
  return ohms === null ? null : { ...rest, value: ohms }
}

const factOf = (fact: RecordedFact, draft: Draft): unknown => {
  if (fact.kind === "resistance") return readingOf(fact, draft)
  const text = draft.text.trim()
  if (!isNumeric(fact)) return { ...fact, value: text }
  const { qualifier: _, ...rest } = fact as RecordedFact & { qualifier?: unknown }
  return { ...rest, value: numberOf(text) }
}

/** The changed fact, or why what stands in the fields is none. */
export const parseDraft = (fact: RecordedFact, draft: Draft): Outcome<RecordedFact> => {
  const parsed = RecordedFact.safeParse(factOf(fact, draft))
  if (parsed.success) return done(parsed.data)
  const { label } = showFact(fact)
  if (isNumeric(fact)) return refuse(`${label}: type the digits only, such as 0.05 or 10.`)
  return refuse(`${label}: that does not fit here.`)
}
