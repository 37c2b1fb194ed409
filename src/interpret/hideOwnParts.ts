/**
 * Parts that the worker named himself. The grammar cannot know their names, so each stands in the text as a word that it
 * does know while the text is read, and gets its name back after. Without that, "pump house ten square" would be taken
 * for ten square of whatever part was spoken of before.
 */
import type { Fact } from "../facts/Fact"
import type { Context, Interpretation } from "../facts/Interpretation"
import { sayItem } from "./sayItem"

/** As many names as `grammars/en-GB/parts.jsgf` has words for. */
const letters = [..."abcdefghijkl"]

interface HiddenParts {
  text: string
  context: Context
  /** Gives the names back in what was made of the text. */
  show(interpretation: Interpretation): Interpretation
}

/** Every text in a value, changed; what is no text stays. */
const changeTexts = <T>(value: T, change: (text: string) => string): T => {
  if (typeof value === "string") return change(value) as T
  if (Array.isArray(value)) return value.map((one) => changeTexts(one, change)) as T
  if (typeof value !== "object" || value === null) return value
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, changeTexts(one, change)])) as T
}

/** Null when no part of the worker's own is spoken of, or none is current. */
export function hideOwnParts(text: string, context: Context, isWord: (word: string) => boolean): HiddenParts | null {
  if (!context.named?.length) return null
  const { named, ...rest } = context
  // A name of one word that means something else already would turn every sentence with it into another.
  const names = named.filter((item) => item.includes("_") || !isWord(item)).slice(0, letters.length)
  if (names.length === 0) return null
  const pairs = names
    .map((item, at) => ({
      item,
      said: sayItem(item),
      word: `ownpart${letters[at]}`,
      hidden: `own_part_${letters[at]}`,
    }))
    .sort((a, b) => b.said.length - a.said.length)
  const hideText = (words: string) =>
    pairs.reduce(
      (so, { said, word }) => so.replace(new RegExp(`\\b${said.replaceAll(" ", "[ -]+")}\\b`, "gi"), word),
      words,
    )
  const hideItem = (words: string) => pairs.find((one) => one.item === words)?.hidden ?? words
  const showName = (name: string) =>
    pairs.reduce((so, { item, word, hidden }) => (so === hidden ? item : so.replaceAll(word, item)), name)
  const showWords = (words: string) => pairs.reduce((so, { said, word }) => so.replaceAll(word, said), words)
  const showFact = (fact: Fact): Fact =>
    fact.kind === "note"
      ? { ...changeTexts(fact, showName), value: showWords(fact.value) }
      : changeTexts(fact, showName)
  return {
    text: hideText(text),
    context: changeTexts(rest, hideItem),
    show: ({ facts, ask, command }) => ({
      facts: facts.map(showFact),
      ask: changeTexts(ask, showName),
      command:
        command?.kind === "keep_it"
          ? { ...command, reason: showWords(command.reason) }
          : changeTexts(command, showName),
    }),
  }
}
