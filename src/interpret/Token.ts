/** One word or figure of what was heard, with its place in the original text. */

/** What stands between two tokens. `stop` and `question` end a sentence; `hyphen` and `none` mean glued. */
export type Gap = "none" | "space" | "hyphen" | "dash" | "comma" | "colon" | "stop" | "question"

export interface Token {
  /** Lower case, without dots in initials; figures as they were written, with letters O turned into 0. */
  text: string
  isFigure: boolean
  /** Place of the first character in the original text. */
  from: number
  /** Place after the last character. */
  to: number
  /** What follows it. */
  after: Gap
}

/** Whether a phrase may not run across this gap. */
export const isEdgeGap = (gap: Gap): boolean =>
  gap === "comma" || gap === "colon" || gap === "stop" || gap === "question" || gap === "dash"

/** Whether a sentence ends here. */
export const isSentenceEnd = (gap: Gap): boolean => gap === "stop" || gap === "question"
