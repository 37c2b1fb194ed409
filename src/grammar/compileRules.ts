/**
 * Prepares rules for matching: every part of a rule learns which words it can begin with and whether it can be empty,
 * so that the matcher enters only what can succeed.
 */
import type { Expansion } from "./Expansion"
import { findNullableRules, type GrammarSet, isNullable } from "./linkGrammars"

export interface Node {
  expansion: Expansion
  nullable: boolean
  parts: readonly Node[]
  /** Words it can begin with; null when it can be empty. */
  first: ReadonlySet<string> | null
  /** Of a choice: its alternatives by the words they begin with, in written order, and those that may be empty. */
  byFirst: ReadonlyMap<string, readonly number[]> | null
  open: readonly number[]
}

/** The form that marks a place where a rule that the caller reads itself begins. No grammar word looks like it. */
export const formOf = (rule: string): string => `<${rule}>`

/** Compiled rules by full name. `givenRules` are read by the caller, and begin where their form stands. */
export function compileRules(set: GrammarSet, givenRules: ReadonlySet<string>): ReadonlyMap<string, Node> {
  const nullable = findNullableRules(set)
  const nodes = new Map<string, Node>()
  const nodeOfRule = (name: string): Node => {
    const known = nodes.get(name)
    if (known) return known
    const node = compile(set.get(name)!.expansion)
    nodes.set(name, node)
    return node
  }
  const firstOf = (expansion: Expansion, parts: readonly Node[]): ReadonlySet<string> | null => {
    switch (expansion.type) {
      case "word":
        return new Set([expansion.word])
      case "ref":
        return givenRules.has(expansion.rule) ? new Set([formOf(expansion.rule)]) : nodeOfRule(expansion.rule).first
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
    const first = isEmpty ? null : firstOf(expansion, parts)
    return { expansion, nullable: isEmpty, parts, first, ...indexChoice(expansion, parts) }
  }
  for (const name of set.keys()) nodeOfRule(name)
  return nodes
}

function indexChoice(expansion: Expansion, parts: readonly Node[]): Pick<Node, "byFirst" | "open"> {
  if (expansion.type !== "choice") return { byFirst: null, open: [] }
  const byFirst = new Map<string, number[]>()
  for (const [at, part] of parts.entries())
    for (const word of part.first ?? []) byFirst.set(word, [...(byFirst.get(word) ?? []), at])
  return { byFirst, open: parts.flatMap((part, at) => (part.first ? [] : [at])) }
}

function partsOf(expansion: Expansion): readonly Expansion[] {
  if (expansion.type === "sequence" || expansion.type === "choice") return expansion.items
  return "item" in expansion ? [expansion.item] : []
}

/** First words of all parts up to and with the first that cannot be empty. */
function firstOfSequence(parts: readonly Node[]): ReadonlySet<string> | null {
  const solid = parts.findIndex((part) => !part.nullable)
  return union(parts.slice(0, solid + 1).map((part) => (part.nullable ? firstInside(part) : part.first)))
}

const firstInside = (part: Node) =>
  part.expansion.type === "optional" || part.expansion.type === "repeat" ? part.parts[0]!.first : null

function union(sets: ReadonlyArray<ReadonlySet<string> | null>): ReadonlySet<string> | null {
  const all = new Set<string>()
  for (const set of sets) {
    if (!set) return null
    for (const word of set) all.add(word)
  }
  return all
}
