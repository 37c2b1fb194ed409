/**
 * A flat grammar as the smallest automaton that takes the same sentences. The engine's own reading of a grammar makes a
 * state for every word of every use of every rule, and its search looks at every state in every frame: on the product's
 * grammars that is most of its time. Weights are left out: the engine counts them as nothing where they are 1.
 */

export interface Automaton {
  /** Words that lead from each state to another. The first state is the start. */
  arcs: ReadonlyArray<ReadonlyMap<string, number>>
  /** States in which a sentence may end. */
  ends: ReadonlySet<number>
}

/** Whether these words are a whole sentence. */
export const accepts = ({ arcs, ends }: Automaton, words: readonly string[]): boolean => {
  let at: number | undefined = 0
  for (const word of words) {
    at = arcs[at]!.get(word)
    if (at === undefined) return false
  }
  return ends.has(at)
}

/** Null where the text is no grammar, has no public rule, or names a rule that it does not hold. */
export const readFlatGrammar = (jsgf: string): Automaton | null => {
  const text = jsgf.replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, " ").replace(/\{[^}]*\}|\/[\d.eE+-]+\//g, " ")
  const rules = new Map<string, string>()
  let root: string | null = null
  for (const [, isPublic, name, body] of text.matchAll(/(public\s+)?<([^>]+)>\s*=([^;]*);/g)) {
    rules.set(name!, body!)
    if (isPublic && root === null) root = name!
  }
  if (root === null) return null
  const paths = new Paths(rules)
  const [start, end] = [paths.state(), paths.state()]
  return paths.addRule(root, start, end, []) ? minimise(determinise(paths, start, end)) : null
}

/** The grammar as it stands: states with words between them, and free steps. */
class Paths {
  readonly free: number[][] = []
  readonly arcs: [word: string, to: number][][] = []
  constructor(private readonly rules: ReadonlyMap<string, string>) {}

  state(): number {
    this.free.push([])
    this.arcs.push([])
    return this.free.length - 1
  }

  /** False where a rule is missing or calls itself. */
  addRule(name: string, from: number, to: number, above: readonly string[]): boolean {
    const body = this.rules.get(name)
    if (body === undefined || above.includes(name)) return false
    const tokens = body.match(/<[^>]+>|[()[\]|*+]|[^\s()[\]|*+<>]+/g) ?? []
    return this.addChoice(tokens, { at: 0 }, { from, to }, [...above, name])
  }

  private addChoice(tokens: string[], place: { at: number }, ends: Ends, above: readonly string[]): boolean {
    for (;;) {
      let last = ends.from
      while (place.at < tokens.length && !["|", ")", "]"].includes(tokens[place.at]!)) {
        const next = this.state()
        if (!this.addRepeated(tokens, place, { from: last, to: next }, above)) return false
        last = next
      }
      this.free[last]!.push(ends.to)
      if (tokens[place.at] !== "|") return true
      place.at++
    }
  }

  private addRepeated(tokens: string[], place: { at: number }, { from, to }: Ends, above: readonly string[]): boolean {
    const [first, last] = [this.state(), this.state()]
    if (!this.addSingle(tokens, place, { from: first, to: last }, above)) return false
    const sign = tokens[place.at]
    this.free[from]!.push(first)
    this.free[last]!.push(to)
    if (sign !== "*" && sign !== "+") return true
    place.at++
    this.free[last]!.push(first)
    if (sign === "*") this.free[from]!.push(to)
    return true
  }

  private addSingle(tokens: string[], place: { at: number }, ends: Ends, above: readonly string[]): boolean {
    const token = tokens[place.at++]!
    if (token === "(" || token === "[") {
      if (token === "[") this.free[ends.from]!.push(ends.to)
      return this.addChoice(tokens, place, ends, above) && tokens[place.at++] === (token === "(" ? ")" : "]")
    }
    if (token === "<NULL>") this.free[ends.from]!.push(ends.to)
    else if (token.startsWith("<")) return this.addRule(token.slice(1, -1), ends.from, ends.to, above)
    else this.arcs[ends.from]!.push([token, ends.to])
    return true
  }
}

interface Ends {
  from: number
  to: number
}

/** For each state those that count of what can be reached from it for nothing: they take a word, or are the end. */
const reachFreely = (paths: Paths, end: number): ReadonlyArray<readonly number[]> =>
  paths.free.map((_, from) => {
    const all = new Set([from])
    for (const state of all) for (const next of paths.free[state]!) all.add(next)
    return [...all].filter((state) => state === end || paths.arcs[state]!.length > 0).sort((a, b) => a - b)
  })

/** One state for each set of states that can be reached by the same words. */
const determinise = (paths: Paths, start: number, end: number): Automaton => {
  const reached = reachFreely(paths, end)
  const spread = (states: readonly number[]) =>
    states.length === 1
      ? reached[states[0]!]!
      : [...new Set(states.flatMap((state) => reached[state]!))].sort((a, b) => a - b)
  const sets: (readonly number[])[] = []
  const numbers = new Map<string, number>()
  const numberOf = (set: readonly number[]) => {
    const key = set.join()
    const known = numbers.get(key)
    if (known !== undefined) return known
    numbers.set(key, sets.push(set) - 1)
    return sets.length - 1
  }
  numberOf(spread([start]))
  const arcs: Map<string, number>[] = []
  for (let at = 0; at < sets.length; at++) {
    const byWord = new Map<string, number[]>()
    for (const state of sets[at]!)
      for (const [word, to] of paths.arcs[state]!) {
        const known = byWord.get(word)
        if (known) known.push(to)
        else byWord.set(word, [to])
      }
    arcs.push(new Map([...byWord].map(([word, to]) => [word, numberOf(spread(to))])))
  }
  return { arcs, ends: new Set([...sets.keys()].filter((at) => sets[at]!.includes(end))) }
}

/** States from which the same words lead on are one, found by parting them until nothing parts any more. */
const minimise = ({ arcs, ends }: Automaton): Automaton => {
  let classOf: number[] = arcs.map((_, at) => (ends.has(at) ? 1 : 0))
  for (let count = 0; ; ) {
    const numbers = new Map<string, number>()
    classOf = arcs.map((out, at) => {
      const leads = [...out].map(([word, to]) => `${word} ${classOf[to]}`).sort()
      const key = `${classOf[at]}:${leads.join()}`
      if (!numbers.has(key)) numbers.set(key, numbers.size)
      return numbers.get(key)!
    })
    if (numbers.size === count) break
    count = numbers.size
  }
  // Classes are numbered in the order of their first state, so the start stays first.
  const merged: Map<string, number>[] = []
  for (const [at, out] of arcs.entries())
    merged[classOf[at]!] ??= new Map([...out].map(([word, to]) => [word, classOf[to]!]))
  return { arcs: merged, ends: new Set([...ends].map((at) => classOf[at]!)) }
}
