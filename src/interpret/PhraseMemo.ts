/**
 * How a phrase was said, remembered by the kinds of words it is made of: "ten metres" and "twelve metres" are one
 * pattern, worked out once. Where a word may be stepped over, how that is done can hang on the words behind the phrase, so
 * the pattern goes on to where no phrase can run. Only so many patterns are kept.
 */
import type { PlaceClass } from "../grammar/PhraseFinder"
import type { Match, PlacedTag } from "../grammar/WordRow"

/** The tags of a phrase, their places counted from its first word. */
export interface Told {
  tags: readonly PlacedTag[]
  /** The text behind the "=" by the name before it, of the first tag of that name. */
  said: ReadonlyMap<string, string>
  doubt: number
}

/** Most patterns go on in one way and are told in one way, which is kept beside the rest and looked at first. */
interface Pattern {
  step: number
  behind: Pattern | null
  next: Map<number, Pattern> | null
  /** By rule and length. */
  key: number
  known: Told | null
  told: Map<number, Told> | null
}

const emptyPattern = (): Pattern => ({ step: Number.NaN, behind: null, next: null, key: -1, known: null, told: null })

/** What each place of an utterance is. */
export interface PatternRow {
  classes: readonly PlaceClass[]
  numberEnds: readonly number[]
  isEdge(at: number): boolean
}

/** Where a phrase stands in its row. */
interface Span {
  from: number
  to: number
}

/** More words than any utterance has. */
const longest = 4096
/** Words of a pattern that is worth keeping: longer ones are not said twice. */
const longestPattern = 16
const mostPatterns = 50_000

export class PhraseMemo {
  /** By the class that a phrase begins with. */
  private roots: Array<Pattern | undefined> = []
  private size = 0

  /** What is known of the phrase; worked out by `tell` when it is not. Null when `tell` finds no such phrase. */
  recall(rule: number, row: PatternRow, { from, to }: Span, tell: () => Match | null): Told | null {
    const pattern = this.patternOf(row, from, to)
    if (!pattern) {
      const match = tell()
      return match && toldOf(match, from)
    }
    const key = rule * longest + to - from
    const known = pattern.key === key ? pattern.known : pattern.told?.get(key)
    if (known) return known
    const match = tell()
    if (!match) return null
    const told = toldOf(match, from)
    if (pattern.known) {
      pattern.told ??= new Map()
      pattern.told.set(key, told)
    } else {
      pattern.key = key
      pattern.known = told
    }
    return told
  }

  private patternOf({ classes, numberEnds, isEdge }: PatternRow, from: number, to: number): Pattern | null {
    let pattern: Pattern | null = null
    let end = to
    for (let at = from; at < end; at += 1) {
      const { id, isSkippable } = classes[at]!
      if (isSkippable && end === to) while (end < classes.length && !isEdge(end)) end += 1
      if (end - from > longestPattern) return null
      pattern = pattern ? this.follow(pattern, id) : this.begin(id)
      if (numberEnds[at]! > 0) pattern = this.follow(pattern, at - numberEnds[at]!)
    }
    return pattern
  }

  private begin(id: number): Pattern {
    const known = this.roots[id]
    if (known) return known
    const made = this.make()
    this.roots[id] = made
    return made
  }

  private follow(pattern: Pattern, step: number): Pattern {
    if (pattern.step === step) return pattern.behind!
    const known = pattern.next?.get(step)
    if (known) return known
    const made = this.make()
    if (pattern.behind) {
      pattern.next ??= new Map()
      pattern.next.set(step, made)
    } else {
      pattern.step = step
      pattern.behind = made
    }
    return made
  }

  private make(): Pattern {
    this.size += 1
    if (this.size > mostPatterns) {
      this.roots = []
      this.size = 0
    }
    return emptyPattern()
  }
}

/** Tags as they are kept. */
function toldOf({ tags, doubt }: Match, from: number): Told {
  const said = new Map<string, string>()
  for (const { text } of tags) {
    const [name] = text.split("=", 1) as [string]
    if (!said.has(name)) said.set(name, text.slice(name.length + 1))
  }
  return { tags: tags.map((tag) => ({ text: tag.text, from: tag.from - from, to: tag.to - from })), said, doubt }
}
