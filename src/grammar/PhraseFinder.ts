/**
 * Says where which rules match, in one walk over the words for all rules together, without tags. The walk goes through
 * states of a deterministic automaton that are made when they are first met and then kept, so that a word costs one
 * look-up however many rules there are. It may say a little too much: where a small word both begins the next part of
 * a phrase and may be stepped over, `GrammarMatcher` has the last word.
 */
import { type Automaton, buildAutomaton } from "./buildAutomaton"
import { formOf } from "./compileRules"
import { type GrammarMatcher, longestSkip } from "./GrammarMatcher"
import type { WordForm } from "./WordRow"

/** What the finder needs to know of one way to read a place; places that read alike share one. */
export interface PlaceClass {
  id: number
  forms: readonly WordForm[]
  isSkippable: boolean
}

/** A row of places: their classes, the end of the given phrase that begins there (0 for none), and the edges. */
export interface ClassRow {
  classes: readonly PlaceClass[]
  givenEnds: readonly number[]
  isEdge(at: number): boolean
}

/** `rule` is the number of the rule in the finder's list. */
export interface Phrase {
  rule: number
  from: number
  to: number
  doubt: number
}

interface State {
  /** Places of the automaton with their doubt and the words just stepped over; see `pack`. */
  items: readonly number[]
  /** Rules that end with the last word, and the least doubt they do so with. */
  rules: readonly number[]
  doubts: readonly number[]
  next: Map<number, State | null>
}

/** States kept before all are dropped and made again as they are met: some megabytes. */
const mostStates = 20_000

const pack = (place: number, skips: number): number => place * 4 + skips

export class PhraseFinder {
  private readonly automaton: Automaton
  /** Words that some rule takes. */
  private readonly taken: ReadonlySet<number>
  private readonly beginnings = new Map<number, number[]>()
  private readonly classes = new Map<string, PlaceClass>()
  private readonly given: PlaceClass
  private states = new Map<string, State>()
  /** By the number of the class that a phrase begins with. */
  private first: (State | null | undefined)[] = []
  private readonly reached: Array<{ places: readonly number[]; rules: readonly number[] } | undefined> = []

  /** A finder of these rules (full names). One rule at most may be read by the caller. */
  constructor(matcher: GrammarMatcher, rules: readonly string[]) {
    const { set, givenRules, words } = matcher
    this.automaton = buildAutomaton(set, rules, givenRules, words)
    this.taken = new Set(this.automaton.word.filter((word) => word > 0))
    const [given] = givenRules
    this.given = this.classOf([{ word: given ? words.idOf(formOf(given)) : 0, doubt: 0 }], false)
    for (const start of this.automaton.starts)
      for (const place of this.reach(start).places) {
        const word = this.automaton.word[place]!
        const known = this.beginnings.get(word)
        if (known) known.push(place)
        else this.beginnings.set(word, [place])
      }
  }

  /** The class of a place that can be read in these ways. */
  classOf(forms: readonly WordForm[], isSkippable: boolean): PlaceClass {
    const known = forms.filter((form) => this.taken.has(form.word))
    const key = `${isSkippable} ${known.map((form) => `${form.word}:${form.doubt}`).join(" ")}`
    const same = this.classes.get(key)
    if (same) return same
    const made = { id: this.classes.size, forms: known, isSkippable }
    this.classes.set(key, made)
    return made
  }

  /** Every phrase of the row, by where it begins. */
  find(row: ClassRow): Phrase[] {
    const found: Phrase[] = []
    for (let at = 0; at < row.classes.length; at += 1) {
      const state = this.begin(row.classes[at]!)
      if (state) this.walk(row, at, state, at + 1, found)
      const end = row.givenEnds[at]!
      const behind = end > 0 ? this.begin(this.given) : null
      if (behind) this.walk(row, at, behind, end, found)
    }
    return found
  }

  private walk(row: ClassRow, from: number, first: State, second: number, found: Phrase[]): void {
    let state: State | null = first
    let at = second
    for (;;) {
      for (let one = 0; one < state.rules.length; one += 1)
        found.push({ rule: state.rules[one]!, from, to: at, doubt: state.doubts[one]! })
      if (state.items.length === 0 || at >= row.classes.length || row.isEdge(at)) return
      const end = row.givenEnds[at]!
      const behind: State | null = end > 0 ? this.step(state, this.given) : null
      if (behind) this.walk(row, from, behind, end, found)
      state = this.step(state, row.classes[at]!)
      if (!state) return
      at += 1
    }
  }

  private begin(place: PlaceClass): State | null {
    const known = this.first[place.id]
    if (known !== undefined) return known
    const drafts = new Draft()
    for (const form of place.forms)
      for (const one of this.beginnings.get(form.word) ?? []) this.enter(drafts, this.automaton.next[one]!, form.doubt)
    const state = this.keep(drafts)
    this.first[place.id] = state
    return state
  }

  private step(state: State, place: PlaceClass): State | null {
    const known = state.next.get(place.id)
    if (known !== undefined) return known
    const drafts = new Draft()
    for (const item of state.items) {
      const doubt = item % 4
      const skips = Math.floor(item / 4) % 4
      const at = Math.floor(item / 16)
      for (const form of place.forms)
        if (form.word === this.automaton.word[at])
          this.enter(drafts, this.automaton.next[at]!, Math.max(doubt, form.doubt))
      if (place.isSkippable && skips < longestSkip) drafts.put(pack(at, skips + 1), doubt)
    }
    const next = this.keep(drafts)
    state.next.set(place.id, next)
    return next
  }

  private enter(drafts: Draft, place: number, doubt: number): void {
    const { places, rules } = this.reach(place)
    for (const one of places) drafts.put(pack(one, 0), doubt)
    for (const rule of rules) drafts.end(rule, doubt)
  }

  /** Places that take a word, and rules that end, from here on without a word. */
  private reach(from: number): { places: readonly number[]; rules: readonly number[] } {
    const known = this.reached[from]
    if (known) return known
    const { word, free, ends } = this.automaton
    const seen = new Set([from])
    const places: number[] = []
    const rules: number[] = []
    for (const place of seen) {
      if (word[place]! > 0) places.push(place)
      if (ends[place]! >= 0) rules.push(ends[place]!)
      for (const next of free[place]!) seen.add(next)
    }
    const all = { places, rules }
    this.reached[from] = all
    return all
  }

  private keep(draft: Draft): State | null {
    if (draft.isEmpty()) return null
    const made = draft.toState()
    const key = `${made.items.join(" ")}|${made.rules.join(" ")}|${made.doubts.join(" ")}`
    const known = this.states.get(key)
    if (known) return known
    if (this.states.size >= mostStates) {
      this.states = new Map()
      this.first = []
    }
    this.states.set(key, made)
    return made
  }
}

/** A state in the making: the least doubt of each place and of each rule that ends. */
class Draft {
  private readonly items = new Map<number, number>()
  private readonly rules = new Map<number, number>()

  put(item: number, doubt: number): void {
    putLeast(this.items, item, doubt)
  }

  end(rule: number, doubt: number): void {
    putLeast(this.rules, rule, doubt)
  }

  isEmpty(): boolean {
    return this.items.size === 0 && this.rules.size === 0
  }

  toState(): State {
    const rules = [...this.rules.keys()].sort((one, other) => one - other)
    return {
      items: [...this.items].map(([item, doubt]) => item * 4 + doubt).sort((one, other) => one - other),
      rules,
      doubts: rules.map((rule) => this.rules.get(rule)!),
      next: new Map(),
    }
  }
}

function putLeast(all: Map<number, number>, key: number, doubt: number): void {
  const known = all.get(key)
  if (known === undefined || doubt < known) all.set(key, doubt)
}
