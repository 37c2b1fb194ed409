/**
 * A number found in the words, with everything that bears on how far it may be believed. The value is built as decimal
 * text and turned into a number once, so that no sum of binary fractions ever gets in.
 */
export interface NumberReading {
  /** First token and the one after the last. */
  from: number
  to: number
  /** Exact decimal text: "0.05". */
  text: string
  value: number
  /** `implied` is "four fifty" for 450; `digits` is "one four" for 14; `clock` is "16:14". */
  shape: "whole" | "decimal" | "implied" | "digits" | "fraction" | "clock" | "none"
  /** What stood before the point: a spoken nought, nothing, a whole number; null without a point. */
  lead: "nought" | "nothing" | "whole" | null
  /** Digits after the point. */
  places: number
  /** Whether it came in words and not in figures. */
  spoken: boolean
  /** "1,200": a thousand and more, unless the comma was a point. */
  hasThousandsComma: boolean
  /** "0.0 5": a space inside, which a unit other than ohms makes doubtful. */
  isSplit: boolean
  /** Set when the words do not settle the number: it may then be asked about but never written. */
  doubt: NumberDoubt | null
}

export interface NumberDoubt {
  candidates: readonly number[]
  because: string
}
