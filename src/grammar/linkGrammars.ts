/**
 * Joins grammar files into one set in which every rule has a full name (`file.rule`). A set that refers to a rule that
 * is not there, or that runs into itself before its first word, is refused here and not when somebody speaks.
 */
import type { Expansion, GrammarFile, Rule } from "./Expansion"
import { GrammarError } from "./GrammarError"

export interface LinkedRule extends Rule {
  /** `file.rule` */
  fullName: string
}

export type GrammarSet = ReadonlyMap<string, LinkedRule>

/** Links files by their `grammar` names. Throws `GrammarError` for a missing, hidden, doubled or left-recursive rule. */
export function linkGrammars(files: readonly GrammarFile[]): GrammarSet {
  const set = new Map<string, LinkedRule>()
  for (const file of files)
    for (const rule of file.rules) {
      const fullName = `${file.name}.${rule.name}`
      if (set.has(fullName)) throw new GrammarError(file.name, 1, `<${rule.name}> is defined twice`)
      set.set(fullName, { ...rule, fullName })
    }
  for (const file of files) {
    const resolve = resolverOf(file, set)
    for (const rule of file.rules) {
      const fullName = `${file.name}.${rule.name}`
      set.set(fullName, { ...rule, fullName, expansion: renameRefs(rule.expansion, resolve) })
    }
  }
  refuseLeftRecursion(set)
  return set
}

function resolverOf(file: GrammarFile, set: ReadonlyMap<string, LinkedRule>) {
  const own = new Set(file.rules.map((rule) => rule.name))
  const isImported = (fullName: string) =>
    file.imports.some((name) => name === fullName || name === fullName.replace(/\.[^.]*$/, ".*"))
  return (written: string): string => {
    if (own.has(written)) return `${file.name}.${written}`
    const target = set.get(written)
    if (!target) throw new GrammarError(file.name, 1, `<${written}> is not defined`)
    if (!isImported(written)) throw new GrammarError(file.name, 1, `<${written}> is not imported`)
    if (!target.isPublic) throw new GrammarError(file.name, 1, `<${written}> is not public`)
    return written
  }
}

function renameRefs(expansion: Expansion, resolve: (written: string) => string): Expansion {
  switch (expansion.type) {
    case "word":
      return expansion
    case "ref":
      return { type: "ref", rule: resolve(expansion.rule) }
    case "sequence":
      return { ...expansion, items: expansion.items.map((item) => renameRefs(item, resolve)) }
    case "choice":
      return { ...expansion, items: expansion.items.map((item) => renameRefs(item, resolve)) }
    default:
      return { ...expansion, item: renameRefs(expansion.item, resolve) }
  }
}

/** Whether the expansion can match no words at all, given what is known about rules so far. */
export function isNullable(expansion: Expansion, nullableRules: ReadonlySet<string>): boolean {
  switch (expansion.type) {
    case "word":
      return false
    case "ref":
      return nullableRules.has(expansion.rule)
    case "sequence":
      return expansion.items.every((item) => isNullable(item, nullableRules))
    case "choice":
      return expansion.items.some((item) => isNullable(item, nullableRules))
    case "optional":
      return true
    case "repeat":
      return expansion.least === 0 || isNullable(expansion.item, nullableRules)
    case "tagged":
      return isNullable(expansion.item, nullableRules)
  }
}

/** Names of rules that can match no words. */
export function findNullableRules(set: GrammarSet): Set<string> {
  const nullable = new Set<string>()
  for (let grew = true; grew; ) {
    grew = false
    for (const rule of set.values())
      if (!nullable.has(rule.fullName) && isNullable(rule.expansion, nullable)) {
        nullable.add(rule.fullName)
        grew = true
      }
  }
  return nullable
}

function refuseLeftRecursion(set: GrammarSet): void {
  const nullable = findNullableRules(set)
  const firstRefs = (expansion: Expansion): string[] => {
    switch (expansion.type) {
      case "word":
        return []
      case "ref":
        return [expansion.rule]
      case "sequence": {
        const solid = expansion.items.findIndex((item) => !isNullable(item, nullable))
        return expansion.items.slice(0, solid === -1 ? undefined : solid + 1).flatMap(firstRefs)
      }
      case "choice":
        return expansion.items.flatMap(firstRefs)
      default:
        return firstRefs(expansion.item)
    }
  }
  const closed = new Set<string>()
  const visit = (name: string, trail: readonly string[]): void => {
    if (closed.has(name)) return
    if (trail.includes(name)) throw new GrammarError(name, 1, "the rule begins with itself")
    for (const next of firstRefs(set.get(name)!.expansion)) visit(next, [...trail, name])
    closed.add(name)
  }
  for (const name of set.keys()) visit(name, [])
}
