/** How a line of the collected check values is compared with what the rules give. */
import type { Outcome } from "../../src/facts/Outcome"

export interface CollectedValue {
  id: string
  inputs: Record<string, unknown>
  expected: unknown
  unit: string
  tolerance: string
  confirm: string
}
/** What the rules give and what the collection holds. Numbers are compared within `within`, all else exactly. */
export interface Comparison {
  got: unknown
  want: unknown
  within?: number
}

export const must = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(outcome.because)
  return outcome.value
}
export const num = (value: CollectedValue, name: string) => Number(value.inputs[name])
export const metalOf = (value: CollectedValue) => (value.inputs.material === "Al" ? "aluminium" : "copper")
/** The figures that stand in a text, in order. */
export const numbersIn = (text: unknown) =>
  [...String(text).matchAll(/\d+(?:\.\d+)?/g)].map(([digits]) => Number(digits))
export const close = (got: number, value: CollectedValue, within: number): Comparison => ({
  got,
  want: Number(value.expected),
  within,
})
export const same = (got: unknown, want: unknown): Comparison => ({ got, want })

export type Make = (value: CollectedValue) => Comparison
