/**
 * A fact as the shortest words that cannot be mistaken for another fact. Interpreting these words gives the fact again,
 * which is tested over thousands of facts. None of them holds a word that confirms, denies or repairs, so that an app
 * that hears itself changes nothing.
 */
import type { Arrangement, RecordedFact } from "../facts/Fact"
import type { Item } from "../facts/Item"
import type { Qualifier } from "../facts/Quantity"
import { sayNumber } from "../facts/sayNumber"
import { sayItem } from "./sayItem"
import { sayStep } from "./sayStep"
import { saySurvey } from "./saySurvey"
import { sayDate, sayTime } from "./sayTime"

const arrangements: Readonly<Record<Arrangement, string>> = { "TN-S": "TNS", "TN-C-S": "TNCS", TT: "TT" }
const limits: Readonly<Record<Qualifier, string>> = { ">": "more than ", "<": "less than ", "<=": "no more than " }

/** One fact in words: "Water. Sixteen square." */
export function readBack(fact: RecordedFact): string {
  switch (fact.kind) {
    case "conductor_csa":
      return about(fact.subject, `${sayNumber(fact.value)} square`)
    case "neutral_csa":
      return sentence(`supply neutral ${sayNumber(fact.value)} square`)
    case "service":
      return sentence(sayItem(fact.value))
    case "length":
      return about(fact.subject, `${sayNumber(fact.value)} ${fact.value === 1 ? "metre" : "metres"}`)
    case "distance":
      return about(fact.subject, `clamp ${limitOf(fact.qualifier)}${sayNumber(fact.value)} millimetres away`)
    case "resistance":
      if (fact.subject === "supply") return sentence(`supply loop ${sayReading(fact.value, fact.qualifier)}`)
      return about(fact.subject, sayReading(fact.value, fact.qualifier))
    case "earthing_arrangement":
      return sentence(`supply ${arrangements[fact.value]}`)
    case "fuse_rating":
      return sentence(`supply fuse ${sayNumber(fact.value)} amps`)
    case "polarity":
      return sentence(`polarity ${fact.value}`)
    case "step_done":
      return about(fact.subject, sayStep(fact.value))
    case "survey":
      return about(fact.subject, saySurvey(fact.value))
    case "note":
      return `Note: ${fact.value}`
    case "time":
      return fact.unit === "time" ? sentence(`time ${sayTime(fact.value)}`) : sentence(`date ${sayDate(fact.value)}`)
  }
}

/** A reading in ohms, or kilohms and megohms when it is over range. */
export function sayReading(ohms: number | null, qualifier?: Qualifier): string {
  if (ohms === null) return "over range"
  const lead = qualifier === ">" && ohms >= 1000 ? "over range, " : ""
  return lead + limitOf(qualifier) + sayOhms(ohms)
}

function sayOhms(ohms: number): string {
  if (ohms >= 1_000_000) return `${sayNumber(shift(ohms, 6))} megohms`
  if (ohms >= 1000) return `${sayNumber(shift(ohms, 3))} kilohms`
  return `${sayNumber(ohms)} ${ohms === 1 ? "ohm" : "ohms"}`
}

/** Divides by a power of ten without a rounding tail: 99900 by 10³ is 99.9. */
const shift = (value: number, powers: number) => Number(`${value}e-${powers}`)

const limitOf = (qualifier: Qualifier | undefined) => (qualifier ? limits[qualifier] : "")

const about = (item: Item | undefined, words: string) =>
  item ? `${sentence(sayItem(item))} ${sentence(words)}` : sentence(words)

const sentence = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`
