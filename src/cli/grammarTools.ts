/**
 * For people who change the grammars: why a sentence was read so, what a rule can say, and which sentences two rules
 * both claim. Plain functions that give lines, so that they can be tested without a terminal.
 */

import type { Context } from "../facts/Interpretation"
import { done, type Outcome, refuse } from "../facts/Outcome"
import { sampleRule } from "../grammar/sampleRule"
import { createInterpreter, type Interpreter } from "../interpret/createInterpreter"
import { type GrammarFiles, readGrammarFolder } from "../interpret/GrammarFolder"

/** Why one sentence was read the way it was. */
export function trySentence(interpreter: Interpreter, text: string, context: Context = {}): string[] {
  const why = interpreter.explain(text, context)
  return [
    `words    ${why.words.join(" ")}`,
    ...why.numbers.map((one) => `number   ${one.words} = ${one.doubt ? `doubtful: ${one.doubt}` : one.value}`),
    ...why.phrases.map(
      (one) => `phrase   ${one.rule}: ${one.words}${one.tags.length > 0 ? ` {${one.tags.join(" ")}}` : ""}`,
    ),
    ...(why.unknown.length > 0 ? [`unknown  ${why.unknown.join(" ")}`] : []),
    ...why.result.facts.map((fact) => `fact     ${JSON.stringify(fact)}`),
    ...(why.result.ask ? [`ask      ${JSON.stringify(why.result.ask)}`] : []),
    ...(why.result.command ? [`command  ${JSON.stringify(why.result.command)}`] : []),
  ]
}

/** Sentences that a rule ("ear.open") allows; the same seed gives the same ones. */
export function sampleSentences(files: GrammarFiles, rule: string, count: number, seed = 1): Outcome<string[]> {
  const { set } = readGrammarFolder(files)
  if (!set.has(rule)) return refuse(`There is no rule "${rule}". Public ones: ${publicRules(files).join(", ")}.`)
  const random = seededRandom(seed)
  return done(Array.from({ length: count }, () => sampleRule(set, rule, random)))
}

/** Full names of all public rules. */
export const publicRules = (files: GrammarFiles): string[] =>
  [...readGrammarFolder(files).set.values()].filter((rule) => rule.isPublic).map((rule) => rule.fullName)

export interface Clash {
  rule: string
  sentence: string
  /** The rule that took the sentence instead. */
  winner: string
}

/** Examples of a rule that another rule takes. An empty list is what the tests want. */
export function findClashes(files: GrammarFiles): Clash[] {
  const interpreter = createInterpreter(files)
  return [...readGrammarFolder(files).set.values()].flatMap((rule) =>
    rule.examples.flatMap((sentence) => {
      const phrases = interpreter.explain(sentence).phrases
      const longest = [...phrases].sort((one, other) => other.words.length - one.words.length)[0]
      return longest?.rule === rule.fullName
        ? []
        : [{ rule: rule.fullName, sentence, winner: longest?.rule ?? "nothing" }]
    }),
  )
}

/** A small generator of numbers from 0 up to 1 (mulberry32), so that samples can be had again. */
export function seededRandom(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
}
