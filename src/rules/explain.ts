/** Lays a finding open: what went in, the table's line, the formula, the same with numbers, the result, and its source. */
import type { Finding } from "../facts/Finding"

const statusWords = {
  direct: "seen in public",
  derived: "worked out from what was seen",
  memory: "from memory, look it up",
} as const

const inputLines = (inputs: Finding["inputs"]) =>
  Object.entries(inputs)
    .filter(([, value]) => value !== null)
    .map(([name, value]) => `${name}: ${value}`)

/** Lines for the screen or a terminal, top down. A finding without a sum gives its values and its source. */
export const explain = (finding: Finding): string[] => {
  const { working, source, status, shown, inputs } = finding
  const sum = working
    ? [
        ...(working.row === undefined ? [] : [`Table: ${working.row}`]),
        `Formula: ${working.formula}`,
        `With numbers: ${working.numbers}`,
        `Result: ${working.result}`,
      ]
    : []
  const from = `Source: ${source.standard}, ${source.edition}, ${source.clause} (${statusWords[status]})`
  return [shown, ...inputLines(inputs), ...sum, from]
}
