/**
 * Prepares rules for matching: every part of a rule learns which words it can begin with and whether it can be empty,
 * so that the matcher enters only what can succeed. Words become numbers here.
 */
import type { Expansion } from "./Expansion"
import { findNullableRules, type GrammarSet, isNullable } from "./linkGrammars"
import type { WordIds } from "./WordIds"

export interface Node {
  type: Expansion["type"]
  nullable: boolean
  parts: readonly Node[]
  /** Of a word: its number. */
  word: number
  /** Of a reference: its rule, by full name. */
  rule: string
  tags: readonly string[]
  least: 0 | 1
  /** Words it can begin with; null when it can be empty. */
  first: ReadonlySet<number> | null
  /** Of a choice: for each word the alternatives that it may begin or that may be empty, in written order. */
  byFirst: ReadonlyMap<number, readonly Node[]>
  /** Of a choice: the alternatives that may be empty. */
  open: readonly Node[]
}

/** The form that marks a place where a rule that the caller reads itself begins. No grammar word looks like it. */
export const formOf = (rule: string): string => `<${rule}>`

/** Compiled rules by full name. `givenRules` are read by the caller, and begin where their form stands. */
export function compileRules(
  set: GrammarSet,
  givenRules: ReadonlySet<string>,
  words: WordIds,
): ReadonlyMap<string, Node> {
  const nullable = findNullableRules(set)
  const nodes = new Map<string, Node>()
  const nodeOfRule = (name: string): Node => {
    const known = nodes.get(name)
    if (known) return known
    const node = compile(set.get(name)!.expansion)
    nodes.set(name, node)
    return node
  }
  const firstOf = (expansion: Expansion, parts: readonly Node[]): ReadonlySet<number> | null => {
    switch (expansion.type) {
      case "word":
        return new Set([words.add(expansion.word)])
      case "ref":
        return givenRules.has(expansion.rule)
          ? new Set([words.add(formOf(expansion.rule))])
          : nodeOfRule(expansion.rule).first
      case "sequence":
        return firstOfSequence(parts)
      case "choice":
        return union(parts.map((part) => part.first))
      default:
        return parts[0]!.first
    }
  }
  const compile = (expansion: Expansion): Node => {
    const parts = partsOf(expansion).map(compile)
    const isEmpty = isNullable(expansion, nullable)
    return {
      type: expansion.type,
      nullable: isEmpty,
      parts,
      word: expansion.type === "word" ? words.add(expansion.word) : 0,
      rule: expansion.type === "ref" ? expansion.rule : "",
      tags: expansion.type === "tagged" ? expansion.tags : [],
      least: expansion.type === "repeat" ? expansion.least : 0,
      first: isEmpty ? null : firstOf(expansion, parts),
      ...indexChoice(expansion, parts),
    }
  }
  for (const name of set.keys()) nodeOfRule(name)
  return nodes
}

function indexChoice(expansion: Expansion, parts: readonly Node[]): Pick<Node, "byFirst" | "open"> {
  if (expansion.type !== "choice") return { byFirst: new Map(), open: [] }
  const byFirst = new Map<number, Node[]>()
  const words = new Set(parts.flatMap((part) => [...(part.first ?? [])]))
  for (const word of words) byFirst.set(word, [])
  for (const part of parts) for (const word of part.first ?? words) byFirst.get(word)!.push(part)
  return { byFirst, open: parts.filter((part) => !part.first) }
}

function partsOf(expansion: Expansion): readonly Expansion[] {
  if (expansion.type === "sequence" || expansion.type === "choice") return expansion.items
  return "item" in expansion ? [expansion.item] : []
}

/** First words of all parts up to and with the first that cannot be empty. */
function firstOfSequence(parts: readonly Node[]): ReadonlySet<number> | null {
  const solid = parts.findIndex((part) => !part.nullable)
  return union(parts.slice(0, solid + 1).map((part) => (part.nullable ? firstInside(part) : part.first)))
}

const firstInside = (part: Node) => (part.type === "optional" || part.type === "repeat" ? part.parts[0]!.first : null)

function union(sets: ReadonlyArray<ReadonlySet<number> | null>): ReadonlySet<number> | null {
  const all = new Set<number>()
  for (const set of sets) {
    if (!set) return null
    for (const word of set) all.add(word)
  }
  return all
}
