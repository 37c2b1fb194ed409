/** The field to change one kind of fact in: a list where only certain values exist, else a number or words. */
import { Arrangement, type RecordedFact, Survey } from "../../facts/Fact"
import { sizesMm2 } from "../../facts/Quantity"
import { type Draft, isNumeric } from "./changeDraft"
import { showFact } from "./showFact"

interface FieldProps {
  fact: RecordedFact
  draft: Draft
  change: (draft: Draft) => void
}

const units = { mm2: "mm²", m: "m", mm: "mm", ohm: "Ω", A: "A" } as const

const choicesOf = (fact: RecordedFact): readonly (readonly [value: string, shown: string])[] | null => {
  if (fact.kind === "conductor_csa" || fact.kind === "neutral_csa")
    return sizesMm2.map((mm2) => [String(mm2), `${mm2} mm²`] as const)
  if (fact.kind === "earthing_arrangement") return Arrangement.options.map((one) => [one, one] as const)
  if (fact.kind === "survey") return Survey.options.map((value) => [value, showFact({ ...fact, value }).value] as const)
  return fact.kind === "polarity" ? (["correct", "reversed"] as const).map((one) => [one, one] as const) : null
}

const OverRange = ({ draft, change }: Pick<FieldProps, "draft" | "change">) => (
  <label className="check-row">
    <input
      type="checkbox"
      checked={draft.overRange}
      onChange={(event) => change({ ...draft, overRange: event.target.checked })}
    />
    <span>Over range; the number is the limit, in Ω</span>
  </label>
)

export const ChangeField = ({ fact, draft, change }: FieldProps) => {
  const { label } = showFact(fact)
  const choices = choicesOf(fact)
  const set = (text: string) => change({ ...draft, text })
  const unit = "unit" in fact && fact.kind !== "time" ? `, in ${units[fact.unit]}` : ""
  return (
    <>
      <label htmlFor="change-value">
        {label}
        {choices ? "" : unit}
      </label>
      {choices ? (
        <select id="change-value" value={draft.text} onChange={(event) => set(event.target.value)}>
          {choices.map(([value, shown]) => (
            <option key={value} value={value}>
              {shown}
            </option>
          ))}
        </select>
      ) : (
        <input
          id="change-value"
          value={draft.text}
          inputMode={isNumeric(fact) ? "decimal" : "text"}
          autoComplete="off"
          onChange={(event) => set(event.target.value)}
        />
      )}
      {fact.kind === "resistance" && <OverRange draft={draft} change={change} />}
    </>
  )
}
