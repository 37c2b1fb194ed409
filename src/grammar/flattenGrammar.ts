/**
 * Writes one rule and all it needs as a single JSGF text for an engine: no imports, no tags, lower case, one public
 * rule. Local rules stay rules, under short names, so that the text stays small.
 */
import type { Expansion } from "./Expansion"
import type { GrammarSet } from "./linkGrammars"

/** The flat text for `root` (a full name); the same set and root always give the same text. */
export function flattenGrammar(set: GrammarSet, root: string, name: string): string {
  const names = new Map<string, string>()
  const queue = [root]
  const nameOf = (rule: string): string => {
    const known = names.get(rule)
    if (known) return known
    const short = `r${names.size}`
    names.set(rule, short)
    queue.push(rule)
    return short
  }
  const bodies: string[] = []
  names.set(root, "r0")
  for (let rule = queue.shift(); rule !== undefined; rule = queue.shift()) {
    const open = rule === root ? "public " : ""
    bodies.push(`${open}<${names.get(rule)}> = ${write(set.get(rule)!.expansion, nameOf)};`)
  }
  return `#JSGF V1.0;\ngrammar ${name};\n${bodies.join("\n")}\n`
}

function write(expansion: Expansion, nameOf: (rule: string) => string): string {
  switch (expansion.type) {
    case "word":
      return expansion.word
    case "ref":
      return `<${nameOf(expansion.rule)}>`
    case "sequence":
      return expansion.items.map((item) => write(item, nameOf)).join(" ")
    case "choice": {
      const weightOf = (at: number) => (expansion.weights ? `/${expansion.weights[at]}/ ` : "")
      return `(${expansion.items.map((item, at) => weightOf(at) + write(item, nameOf)).join(" | ")})`
    }
    case "optional":
      return `[${write(expansion.item, nameOf)}]`
    case "repeat":
      return `(${write(expansion.item, nameOf)})${expansion.least === 0 ? "*" : "+"}`
    case "tagged":
      return `(${write(expansion.item, nameOf)})`
  }
}
