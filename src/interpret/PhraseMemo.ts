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

interface Pattern {
  next: Map<number, Pattern>
  /** By rule and length. */
  told: Map<number, Told>
}

/** Where a phrase stands, and what each place of its row is. */
export interface PatternPlace {
  classes: readonly PlaceClass[]
  numberEnds: readonly number[]
  from: number
  to: number
  isEdge(at: number): boolean
}

/** More words than any utterance has. */
const longest = 4096
/** Words of a pattern that is worth keeping: longer ones are not said twice. */
const longestPattern = 16
const mostPatterns = 50_000

export class PhraseMemo {
  private root: Pattern = { next: new Map(), told: new Map() }
  private size = 0

  /** What is known of the phrase; worked out by `tell` when it is not. Null when `tell` finds no such phrase. */
  recall(rule: number, place: PatternPlace, tell: () => Match | null): Told | null {
    const pattern = this.patternOf(place)
    if (!pattern) {
      const match = tell()
      return match && toldOf(match, place.from)
    }
    const key = rule * longest + place.to - place.from
    const known = pattern.told.get(key)
    if (known) return known
    const match = tell()
    if (!match) return null
    const told = toldOf(match, place.from)
    pattern.told.set(key, told)
    return told
  }

  private patternOf({ classes, numberEnds, from, to, isEdge }: PatternPlace): Pattern | null {
    let pattern = this.root
    let end = to
    for (let at = from; at < end; at += 1) {
      const { id, isSkippable } = classes[at]!
      if (isSkippable && end === to) while (end < classes.length && !isEdge(end)) end += 1
      if (end - from > longestPattern) return null
      pattern = this.follow(pattern, id)
      if (numberEnds[at]! > 0) pattern = this.follow(pattern, at - numberEnds[at]!)
    }
    return pattern
  }

  private follow(pattern: Pattern, step: number): Pattern {
    const known = pattern.next.get(step)
    if (known) return known
    const made = { next: new Map(), told: new Map() }
    this.size += 1
    if (this.size > mostPatterns) {
      this.root = { next: new Map(), told: new Map() }
      this.size = 0
    }
    pattern.next.set(step, made)
    return made
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
