/** "note that …": everything after the lead-in is kept as it was said, and nothing in it is a value. */
import type { Fact } from "../facts/Fact"
import type { Interpretation } from "../facts/Interpretation"
import { isEdgeGap } from "./Token"
import { type Island, tagValue, type Utterance } from "./Utterance"

/** "take a note please, …": one small word before a pause still belongs to the lead-in. */
const isLeadGoingOn = ({ words, tokens }: Utterance, at: number): boolean =>
  /^(on|in|there|here|please|this|it|now|mate|aye|ok|okay|right)$/.test(words[at] ?? "") &&
  at + 1 < tokens.length &&
  isEdgeGap(tokens[at]!.after)

/** "add a note on the gas, …": the part that the note is of, where a pause stands behind it. */
const partOfNote = ({ words, tokens, islands }: Utterance, at: number): Island | undefined =>
  islands.find(
    (one) =>
      one.rule === "parts.part" &&
      one.to < tokens.length &&
      isEdgeGap(tokens[one.to - 1]!.after) &&
      one.from > at &&
      /^(on|for|about|to)( the)?$/.test(words.slice(at, one.from).join(" ")),
  )

/** The note, or null when the utterance does not begin as one. */
export function readNote(utterance: Utterance): Interpretation | null {
  const lead = utterance.islands.find((one) => one.rule === "notes.lead")
  if (!lead) return null
  const before = utterance.leftovers.slice(0, lead.from)
  if (!before.every((leftover) => leftover === "skippable")) return null
  // "write that up as ten mil" says how, and not what.
  if (utterance.words[lead.to - 1] === "up" && !isEdgeGap(utterance.tokens[lead.to - 1]!.after)) return null
  const part = partOfNote(utterance, lead.to)
  const item = part && tagValue(part, "item")
  const first = utterance.tokens[part?.to ?? lead.to + (isLeadGoingOn(utterance, lead.to) ? 1 : 0)]
  const text = first
    ? utterance.text
        .slice(first.from)
        .trim()
        .replace(/[.\s]+$/, "")
    : ""
  if (text === "") return { facts: [], ask: { kind: "note", because: "the note is empty" }, command: null }
  if (text.length > 2000) return { facts: [], ask: { kind: "note", because: "the note is too long" }, command: null }
  const subject = item ? { subject: item } : {}
  const services: Fact[] = item ? [{ kind: "service", value: item }] : []
  return { facts: [...services, { kind: "note", value: text, ...subject }], ask: null, command: null }
}
