/** Values with their units as the report writes them, and names that start a line. */
import type { RecordedFact } from "../../facts/Fact"
import { unitSign } from "../../facts/unitOf"
import { itemWords, valueWords } from "../factWords"

const noted: Partial<Record<string, string>> = { "<": "less than", "<=": "no more than", ">": "more than" }

const fullSteps: Partial<Record<string, string>> = {
  isolated_proved_dead: "isolated and proved dead",
  connected_to_met: "connected at the main earthing terminal",
}

/** "pipe_cleaned" as "pipe cleaned". */
export const stepWords = (step: string): string => fullSteps[step] ?? step.replaceAll("_", " ")

/** "10 mm²", "over range, > 99900 Ω", "over range, limit not said", "no more than 400 mm", "TN-C-S". */
export const quantity = (fact: RecordedFact): string => {
  if (fact.value === null) return "over range, limit not said"
  if (fact.kind === "step_done") return stepWords(fact.value)
  const unit = unitSign(fact.kind)
  const qualifier = "qualifier" in fact ? fact.qualifier : undefined
  if (fact.kind === "resistance" && qualifier === ">") return `over range, > ${fact.value} ${unit}`
  if (qualifier) return `${noted[qualifier]} ${fact.value} ${unit}`
  return unit === "" ? String(valueWords(fact)) : `${valueWords(fact)} ${unit}`
}

/** With a capital first letter. */
export const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`

const fullNames: Partial<Record<string, string>> = { met: "Main earthing terminal", job: "The job as a whole" }

/** "structural_steel" as "Structural steel". */
export const itemName = (item: string | null): string => (item !== null && fullNames[item]) || sentence(itemWords(item))

/** "1 value", "2 values". */
export const count = (number: number, one: string, many = `${one}s`): string => `${number} ${number === 1 ? one : many}`
