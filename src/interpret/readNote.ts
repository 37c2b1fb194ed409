/** "note that …": everything after the lead-in is kept as it was said, and nothing in it is a value. */
import type { Interpretation } from "../facts/Interpretation"
import { isEdgeGap } from "./Token"
import type { Utterance } from "./Utterance"

/** "take a note please, …": one small word before a pause still belongs to the lead-in. */
const isLeadGoingOn = ({ words, tokens }: Utterance, at: number): boolean =>
  /^(on|in|there|here|please|this|it|now|mate|aye|ok|okay|right)$/.test(words[at] ?? "") &&
  at + 1 < tokens.length &&
  isEdgeGap(tokens[at]!.after)

/** The note, or null when the utterance does not begin as one. */
export function readNote(utterance: Utterance): Interpretation | null {
  const lead = utterance.islands.find((one) => one.rule === "notes.lead")
  if (!lead) return null
  const before = utterance.leftovers.slice(0, lead.from)
  if (!before.every((leftover) => leftover === "skippable")) return null
  const first = utterance.tokens[lead.to + (isLeadGoingOn(utterance, lead.to) ? 1 : 0)]
  const text = first
    ? utterance.text
        .slice(first.from)
        .trim()
        .replace(/[.\s]+$/, "")
    : ""
  if (text === "") return { facts: [], ask: { kind: "note", because: "the note is empty" }, command: null }
  if (text.length > 2000) return { facts: [], ask: { kind: "note", because: "the note is too long" }, command: null }
  return { facts: [{ kind: "note", value: text }], ask: null, command: null }
}
