/**
 * Which words of a sentence a value rests on. Word by word, from the end, one is left out and the rest is read again; it
 * stays out where the value is still there. What remains is lit: words that are enough for the value, and none of which
 * can be spared. So the light shows what the interpreter really used, with no second copy of its rules.
 */
import type { RecordedFact } from "../facts/Fact"
import type { Heard } from "../facts/Heard"
import type { Context, Interpretation } from "../facts/Interpretation"
import type { Item } from "../facts/Item"

export type Interpret = (heard: Heard, context: Context) => Interpretation

/** A stretch of the text; the stretches of a sentence joined give its text. */
export interface Span {
  text: string
  lit: boolean
}

/** Sentences of more words are shown without light: each word costs one more reading. */
const mostWords = 40

type ReadFact = Interpretation["facts"][number]

const limitOf = (fact: object) => ("qualifier" in fact ? fact.qualifier : undefined)
const subjectOf = (fact: object) => ("subject" in fact ? fact.subject : undefined)
const kindOf = (fact: ReadFact) => (fact.kind === "correct" ? fact.field : fact.kind)

const isSame = (fact: ReadFact, sought: RecordedFact): boolean =>
  kindOf(fact) === sought.kind && fact.value === sought.value && limitOf(fact) === limitOf(sought)

/** How the reading gives the value: as a fact of that part, as one without a part, or among what it asks; else null. */
const gives = ({ facts, ask }: Interpretation, sought: RecordedFact): string | null => {
  const found = facts.filter((fact) => isSame(fact, sought)).map(subjectOf)
  if (found.includes(subjectOf(sought))) return "whole"
  if (found.includes(undefined)) return "no part"
  const isAsked = ask?.kind === sought.kind && (ask.candidates ?? []).some((one) => one === sought.value)
  return isAsked ? "asked" : null
}

/** From knowing nothing to knowing what was asked: the first under which the sentence gives the value is taken. */
const contextsOf = (sought: RecordedFact, item: Item | null): Context[] => {
  const of = item ? { item } : {}
  const asked = sought.kind === "step_done" ? `step:${sought.value}` : sought.kind
  return [{}, of, { asked }, { ...of, asked }, { ...of, asked: "confirm", readback: sought }]
}

/** Words with the space after them, as they stand in the text. */
const wordsOf = (text: string): string[] => text.match(/\S+\s*/g) ?? []

const readAs = (text: string, heard: Heard): Heard => ({ ...heard, text, alternatives: [], words: [] })

/** Which words cannot be spared: from the end, each is left out, and stays out where `isSame` still holds of the rest. */
const neededOf = (words: readonly string[], isSame: (rest: string) => boolean): boolean[] => {
  const needed = words.map(() => true)
  for (let at = words.length - 1; at >= 0; at--) {
    needed[at] = false
    needed[at] = !isSame(words.filter((_, other) => needed[other]).join(""))
  }
  return needed
}

const spansOf = (text: string, words: readonly string[], lit: readonly boolean[]): Span[] => {
  const lead = text.slice(0, text.length - words.join("").length)
  const pieces = words.flatMap((word, at): Span[] => {
    const space = word.slice(word.trimEnd().length)
    const isLit = lit[at] === true
    return [
      { text: word.trimEnd(), lit: isLit },
      { text: space, lit: isLit && lit[at + 1] === true },
    ]
  })
  return joinAlike([{ text: lead, lit: false }, ...pieces])
}

export const lightUp = (heard: Heard, fact: RecordedFact, item: Item | null, interpret: Interpret): Span[] => {
  const { text } = heard
  const words = wordsOf(text)
  const dark = [{ text, lit: false }]
  if (words.length > mostWords) return dark
  const read = (rest: string, context: Context) => gives(interpret(readAs(rest, heard), context), fact)
  for (const context of contextsOf(fact, item)) {
    const how = read(text, context)
    const needed = how === null ? null : neededOf(words, (rest) => read(rest, context) === how)
    if (needed) return spansOf(text, words, needed)
  }
  return dark
}

/** Neighbours of one kind as one piece, so that a lit phrase has one line under it. */
const joinAlike = (pieces: readonly Span[]): Span[] => {
  const joined: Span[] = []
  for (const { text, lit } of pieces) {
    const last = joined.at(-1)
    if (text !== "" && last?.lit === lit) last.text += text
    else if (text !== "") joined.push({ text, lit })
  }
  return joined
}
