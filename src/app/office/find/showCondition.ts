/** A condition in words, as it was understood: what stands on its chip. */

import { showDate } from "../../../facts/showDate"
import type { Condition, JobState, PartField, Sign, Whose } from "../../../search/Condition"
import { showOhms } from "../../parts/showFact"
import { showItem } from "../../parts/showItem"

const signs: Record<Sign, string> = { "<": "under", "<=": "at most", "=": "just", ">=": "at least", ">": "over" }
const fields: Record<PartField, string> = {
  size: "size",
  reading: "reading",
  length: "length",
  clamp: "clamp distance",
}
const states: Record<JobState, readonly [is: string, isNot: string]> = {
  stop: ["A stop is open", "No stop is open"],
  warn: ["A warning is open", "No warning is open"],
  open: ["Something to look at", "Nothing to look at"],
  kept: ["A warning was kept", "No warning was kept"],
  awaiting: ["A value waits for a yes", "No value waits for a yes"],
  unseen: ["Nobody has said yes to a value", "No value that nobody has said yes to"],
  signed: ["Signed", "Not signed"],
  copy: ["A second copy", "Not a second copy"],
}
const places = { place: "Place", said: "Said", either: "Place or said" } as const

const showWhose = (whose: Whose): string => {
  if ("item" in whose) return showItem(whose.item)
  return whose.any === "bond" ? "A bond" : "A part"
}

const showValue = (field: PartField, value: number): string => {
  if (field === "reading") return showOhms(value)
  return `${value} ${field === "size" ? "mm²" : field === "length" ? "m" : "mm"}`
}

const showDays = (from: string | null, to: string | null): string => {
  if (from === null) return `Until ${showDate(to ?? "")}`
  if (to === null) return `Since ${showDate(from)}`
  return from === to ? `On ${showDate(from)}` : `${showDate(from)} to ${showDate(to)}`
}

/** "Gas: size under 10 mm²". */
export const showCondition = (condition: Condition): string => {
  switch (condition.kind) {
    case "words":
      return `${places[condition.in]}: ${condition.words.join(" ")}`
    case "days":
      return showDays(condition.from, condition.to)
    case "value": {
      const { whose, field, sign, value } = condition
      return `${showWhose(whose)}: ${fields[field]} ${signs[sign]} ${showValue(field, value)}`
    }
    case "recorded":
      return `${showWhose(condition.whose)}: ${condition.not ? "no " : ""}${fields[condition.field]} on record`
    case "overRange":
      return `${showWhose(condition.whose)}: over range`
    case "has":
      return `${condition.not ? "No " : "With "}${showItem(condition.item).toLowerCase()}`
    case "supply":
      return `Supply: ${condition.arrangement}`
    case "state":
      return states[condition.state][condition.not ? 1 : 0]
  }
}
