/**
 * Many rules as one network of word places, so that all of them are looked for in a single walk over the words. A
 * sub-rule is written out wherever it is used, and shared where the same words go on behind it.
 */
import { formOf } from "./compileRules"
import type { Expansion } from "./Expansion"
import type { GrammarSet } from "./linkGrammars"
import type { WordIds } from "./WordIds"

/** A place is a number; it either takes one word, or leads on without a word, or ends a rule. */
export interface Automaton {
  /** Word that the place takes, or 0. */
  word: readonly number[]
  /** Place behind the word. */
  next: readonly number[]
  /** Places that are reached from this one without a word. */
  free: ReadonlyArray<readonly number[]>
  /** The rule that ends here, or -1. */
  ends: readonly number[]
  /** Place where each rule begins. */
  starts: readonly number[]
}

const nowhere: readonly number[] = []

/** The network of the given rules, numbered as they stand in the list. Rules in `givenRules` count as one word each. */
export function buildAutomaton(
  set: GrammarSet,
  rules: readonly string[],
  givenRules: ReadonlySet<string>,
  words: WordIds,
): Automaton {
  const word: number[] = []
  const next: number[] = []
  const free: Array<readonly number[]> = []
  const ends: number[] = []
  const add = (taken: number, behind: number, reached: readonly number[], ended = -1): number => {
    word.push(taken)
    next.push(behind)
    free.push(reached)
    ends.push(ended)
    return word.length - 1
  }
  const shared = new Map<string, number>()
  const buildRule = (rule: string, to: number): number => {
    const key = `${rule} ${to}`
    const known = shared.get(key)
    if (known !== undefined) return known
    const start = build(set.get(rule)!.expansion, to)
    shared.set(key, start)
    return start
  }
  const build = (part: Expansion, to: number): number => {
    switch (part.type) {
      case "word":
        return add(words.add(part.word), to, nowhere)
      case "ref":
        return givenRules.has(part.rule) ? add(words.add(formOf(part.rule)), to, nowhere) : buildRule(part.rule, to)
      case "sequence":
        return part.items.reduceRight((behind, item) => build(item, behind), to)
      case "choice":
        return add(
          0,
          -1,
          part.items.map((item) => build(item, to)),
        )
      case "optional":
        return add(0, -1, [build(part.item, to), to])
      case "repeat": {
        const loop = add(0, -1, nowhere)
        const body = build(part.item, loop)
        free[loop] = [body, to]
        return part.least === 0 ? loop : body
      }
      case "tagged":
        return build(part.item, to)
    }
  }
  const starts = rules.map((rule, at) => buildRule(rule, add(0, -1, nowhere, at)))
  return { word, next, free, ends, starts }
}
