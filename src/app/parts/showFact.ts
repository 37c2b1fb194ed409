/**
 * A fact as the screen shows it: what it is and its value with the unit. Digits are never added or dropped: what was
 * said as 0.1 stays 0.1, and only thousands of ohms change their prefix, by moving the point.
 */
import type { RecordedFact, Survey } from "../../facts/Fact"
import type { Qualifier } from "../../facts/Quantity"
import { showDate } from "../../facts/showDate"
import { showItem } from "./showItem"
import { showStep } from "./showStep"

export interface ShownFact {
  /** "Size", "Reading", "Neutral". */
  label: string
  /** "10 mm²", "over range, > 99.9 kΩ". */
  value: string
}

const sign: Record<Qualifier, string> = { ">": "> ", "<": "< ", "<=": "≤ " }
const signOf = (qualifier: Qualifier | undefined) => (qualifier ? sign[qualifier] : "")

/** Division by a power of ten, with the rubbish that binary fractions leave behind cut off. */
const scale = (value: number, by: number) => String(Number((value / by).toPrecision(12)))

/** Ohms with the prefix a meter would show: "0.05 Ω", "99.9 kΩ", "1.5 MΩ". */
export const showOhms = (ohms: number): string => {
  if (ohms >= 1e6) return `${scale(ohms, 1e6)} MΩ`
  return ohms >= 1000 ? `${scale(ohms, 1000)} kΩ` : `${ohms} Ω`
}

const showReading = (ohms: number | null, qualifier: Qualifier | undefined): string => {
  if (ohms === null) return "over range, limit not said"
  return qualifier === ">" ? `over range, > ${showOhms(ohms)}` : `${signOf(qualifier)}${showOhms(ohms)}`
}

const surveys: Record<Survey, string> = {
  needs_bond: "needs a bond",
  needs_no_bond: "needs no bond",
  plastic_at_entry: "not metal at its entry",
  not_here: "none here",
}

/** Label and value of one fact, without the item it belongs to. */
export const showFact = (fact: RecordedFact): ShownFact => {
  switch (fact.kind) {
    case "conductor_csa":
      return { label: "Size", value: `${fact.value} mm²` }
    case "neutral_csa":
      return { label: "Neutral", value: `${fact.value} mm²` }
    case "length":
      return { label: "Length", value: `${fact.value} m` }
    case "distance":
      return { label: "Clamp distance", value: `${signOf(fact.qualifier)}${fact.value} mm` }
    case "resistance":
      return { label: "Reading", value: showReading(fact.value, fact.qualifier) }
    case "fuse_rating":
      return { label: "Fuse", value: `${fact.value} A` }
    case "earthing_arrangement":
      return { label: "Earthing", value: fact.value }
    case "polarity":
      return { label: "Polarity", value: fact.value }
    case "step_done":
      return { label: showStep(fact.value), value: "done" }
    case "survey":
      return { label: "Survey", value: surveys[fact.value] }
    case "service":
      return { label: "Part", value: showItem(fact.value) }
    case "note":
      return { label: "Note", value: fact.value }
    case "time":
      return fact.unit === "date"
        ? { label: "Date", value: showDate(fact.value) }
        : { label: "Time", value: fact.value }
  }
}
