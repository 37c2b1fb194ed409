/**
 * Whether a sentence is in a flat grammar, by following all its paths at once. The engine cannot say: it only gives the
 * best sentence for a sound. Reads what the ear is given: one file, no imports, rules that do not call themselves.
 */

/** Takes every place in the words that is reached so far, and gives every place reached after this part. */
type Step = (words: readonly string[], from: ReadonlySet<number>) => ReadonlySet<number>

export type SentenceTest = (words: readonly string[]) => boolean

/** Throws over a text that is not a grammar: the engine has taken it before. */
export const readFlatGrammar = (jsgf: string): SentenceTest => {
  const text = jsgf.replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, " ").replace(/\{[^}]*\}|\/[\d.eE+-]+\//g, " ")
  const rules = new Map<string, Step>()
  let root: Step | null = null
  for (const [, isPublic, name, body] of text.matchAll(/(public\s+)?<([^>]+)>\s*=([^;]*);/g)) {
    const step = readRule(body!, (rule) => rules.get(rule))
    rules.set(name!, step)
    if (isPublic) root = step
  }
  if (!root) throw new Error("The grammar has no public rule")
  const start = root
  return (words) => start(words, new Set([0])).has(words.length)
}

const readRule = (body: string, ruleOf: (name: string) => Step | undefined): Step => {
  const tokens = body.match(/<[^>]+>|[()[\]|*+]|[^\s()[\]|*+<>]+/g) ?? []
  let at = 0

  const choice = (): Step => {
    const ways = [sequence()]
    while (tokens[at] === "|") {
      at++
      ways.push(sequence())
    }
    return ways.length === 1 ? ways[0]! : (words, from) => union(ways.map((way) => way(words, from)))
  }

  const sequence = (): Step => {
    const parts: Step[] = []
    while (at < tokens.length && !["|", ")", "]"].includes(tokens[at]!)) parts.push(repeated())
    return (words, from) => parts.reduce((places, part) => part(words, places), from)
  }

  const repeated = (): Step => {
    const once = single()
    const sign = tokens[at]
    if (sign !== "*" && sign !== "+") return once
    at++
    return (words, from) => {
      let reached = sign === "*" ? from : once(words, from)
      for (let before = -1; before < reached.size; ) {
        before = reached.size
        reached = union([reached, once(words, reached)])
      }
      return reached
    }
  }

  const single = (): Step => {
    const token = tokens[at++]!
    if (token === "(" || token === "[") {
      const inner = choice()
      at++
      return token === "(" ? inner : (words, from) => union([from, inner(words, from)])
    }
    if (token === "<NULL>") return (_, from) => from
    if (token.startsWith("<")) {
      const name = token.slice(1, -1)
      return (words, from) => ruleOf(name)?.(words, from) ?? new Set()
    }
    return (words, from) => new Set([...from].filter((place) => words[place] === token).map((place) => place + 1))
  }

  return choice()
}

const union = (sets: readonly ReadonlySet<number>[]): ReadonlySet<number> => new Set(sets.flatMap((set) => [...set]))
