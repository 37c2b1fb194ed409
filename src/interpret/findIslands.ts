/**
 * Grammar phrases as islands in free speech. Of all phrases that match, the set is taken that covers most words with
 * fewest phrases; a number that runs into another is never split for a longer phrase. The finder names the phrases, and
 * the matcher then tells how those few that were chosen were said; one that the finder should not have named is left out.
 */
import { formOf } from "../grammar/compileRules"
import type { Phrase, PlaceClass } from "../grammar/PhraseFinder"
import type { GivenMatch, Match, WordRow } from "../grammar/WordRow"
import { bitOfRule } from "./GrammarBits"
import { askedRules, islandRules, numberRule } from "./islandRules"
import { type Language, phraseRules } from "./Language"
import type { WordEntry } from "./Lexicon"
import type { NumberReading } from "./NumberReading"
import { isEdgeGap, type Token } from "./Token"
import type { Island } from "./Utterance"

/** What is known of an utterance before its phrases are. */
export interface Draft {
  tokens: readonly Token[]
  words: readonly string[]
  entries: readonly WordEntry[]
  numbers: readonly NumberReading[]
}

/** The islands of an utterance, in order; `asked` lets the answers to one question count. */
export function findIslands(draft: Draft, language: Language, asked: string): Island[] {
  return new IslandFinder(draft, language, askedRules[asked]?.length ? asked : "").find()
}

class IslandFinder {
  /** End of the number that begins at a place, or 0. */
  readonly numberEnds: number[]
  private readonly isInside: boolean[]
  readonly classes: readonly PlaceClass[]
  private session: { match(rule: string, at: number): readonly Match[] } | null = null

  constructor(
    private readonly draft: Draft,
    private readonly language: Language,
    private readonly asked: string,
  ) {
    const { length } = draft.tokens
    this.numberEnds = new Array<number>(length).fill(0)
    this.isInside = new Array<boolean>(length).fill(false)
    for (const { from, to } of draft.numbers) {
      this.numberEnds[from] = to
      for (let at = from + 1; at < to; at += 1) this.isInside[at] = true
    }
    this.classes = draft.entries.map((entry, at) =>
      this.numberEnds[at]! > 0 ? entry.opening : this.isInside[at] ? entry.inside : entry.free,
    )
  }

  find(): Island[] {
    const { classes, numberEnds, isEdge } = this
    let phrases = this.language.finder
      .find({ classes, givenEnds: numberEnds, isEdge })
      .filter((one) => isPlain[one.rule] || (this.isAllowed(one) && this.isSensible(one)))
    if (phrases.length === 0) return []
    for (;;) {
      const chosen = this.choose(phrases)
      const islands = chosen.map((one) => this.told(one))
      const wrong = chosen.findIndex((one, at) => islands[at]?.doubt !== one.doubt)
      if (wrong === -1) return islands as Island[]
      phrases = withRight(phrases, chosen[wrong]!, islands[wrong]!)
    }
  }

  readonly isEdge = (at: number): boolean =>
    at > 0 && at < this.isInside.length && isEdgeGap(this.draft.tokens[at - 1]!.after) && !this.isInside[at]

  private match(rule: string, at: number): readonly Match[] {
    this.session ??= this.language.matcher.over(this.wordRow())
    return this.session.match(rule, at)
  }

  private wordRow(): WordRow {
    const { entries } = this.draft
    const numberForm = { word: this.language.matcher.words.idOf(formOf(numberRule)), doubt: 0 }
    return {
      length: entries.length,
      forms: entries.map((entry, at) => {
        if (this.numberEnds[at]! > 0) return [...entry.forms, numberForm]
        return this.isInside[at] ? entry.plainForms : entry.forms
      }),
      isSkippable: (at) => entries[at]!.isSkippable && this.numberEnds[at] === 0,
      isEdge: this.isEdge,
      given: (rule, at) => (rule === numberRule ? givenNumber(this.numberEnds[at] ?? 0) : undefined),
    }
  }

  /** The phrase as it was said, with its tags; null when the matcher does not find it. */
  private told(phrase: Phrase): Island | null {
    const { rule, from, to } = phrase
    const name = phraseRules[rule]!
    const told = this.language.memo.recall(
      rule,
      this,
      phrase,
      () => this.match(name, from).find((one) => one.end === to) ?? null,
    )
    return (
      told && { rule: name, from, to, tags: told.tags, said: told.said, doubt: told.doubt, grammar: grammars[rule]! }
    )
  }

  private isAllowed({ rule }: Phrase): boolean {
    return rule < islandRules.length || (this.asked !== "" && askedRules[this.asked]!.includes(phraseRules[rule]!))
  }

  /** "two metres twenty" is metres and centimetres; "fourteen metres nought point nought three" is two values. */
  private isSensible(phrase: Phrase): boolean {
    const { words, numbers } = this.draft
    switch (phraseRules[phrase.rule]) {
      case "guards.question":
        return this.opensClause(phrase)
      // "nought point nought two both times" counts readings, not what was read.
      case "quantity.foreign":
        if (/^(times|ways)$/.test(words[phrase.to - 1]!) && /^(both|all)$/.test(words[phrase.to - 2] ?? ""))
          return false
        if (words[phrase.to - 1] === "times") return !/^(both|all)$/.test(words[phrase.to - 2] ?? "")
        // "a hundred percent" agrees.
        if (/ ?(hundred|100) percent$/.test(words.slice(phrase.from, phrase.to).join(" ")))
          return phrase.to - phrase.from > 3
        // "ten all the way through" counts no ways.
        return !(words[phrase.to - 1] === "way" && words[phrase.to - 2] === "the")
      // "a ten mil main bond": the main is the bond's and no pipe.
      case "quantity.pipe":
        return !(
          words[phrase.to - 1] === "main" && /^(bond|bonds|bonding|earth|earthing)$/.test(words[phrase.to] ?? "")
        )
      case "quantity.lost":
        return !numbers.some((one) => one.to === phrase.from)
      case "length.length":
        return this.isLength(phrase)
      // "a quarter of a metre" is a length, "two hundred off the meter" a distance.
      case "distance.distance":
        return this.hasCentimetres(phrase) && !/ of a met(re|er)$/.test(words.slice(phrase.from, phrase.to).join(" "))
      default:
        return true
    }
  }

  private isLength(phrase: Phrase): boolean {
    const isBeforeMil = /^(mil|mils|mm|millimetres?|square|sq)$/.test(this.draft.words[phrase.to] ?? "")
    const hasUnit = !isBeforeMil || this.told(phrase)?.tags.some((one) => one.text.startsWith("unit"))
    return hasUnit ? this.hasCentimetres(phrase) : false
  }

  /** Where the phrase holds centimetres, whether they can be some. */
  private hasCentimetres(phrase: Phrase): boolean {
    const { numbers } = this.draft
    const inside = numbers.filter((one) => one.from >= phrase.from && one.to <= phrase.to)
    const tag = inside.length > 1 ? this.told(phrase)?.tags.find((one) => one.text === "cm") : undefined
    if (!tag) return true
    const [number] = inside.filter((one) => one.from - phrase.from >= tag.from && one.to - phrase.from <= tag.to)
    const isExact = this.told(phrase)!.said.has("exact")
    return number?.shape === "whole" && number.value < 100 && (number.spoken || isExact)
  }

  /** A question begins its clause: "is the label on" asks, "that is the label on" tells. */
  private opensClause({ from }: Phrase): boolean {
    const { tokens, words, entries } = this.draft
    // "ohms, which is a lot": goes on about what was said.
    const behind = words.slice(from + 1, from + 3).join(" ")
    if (words[from] === "which" && from > 0 && isRemark.test(behind)) return false
    for (let at = from - 1; at >= 0 && !isEdgeGap(tokens[at]!.after); at -= 1)
      if (!entries[at]!.isSkippable && !/^(and|but|or|hey|oh)$/.test(words[at]!)) return false
    return true
  }

  /** Of two phrases that score the same, the one whose rule stands first, or that the rule itself tells first. */
  private isEarlier(one: Phrase, other: Phrase): boolean {
    if (one.rule !== other.rule) return orderOf(one.rule) < orderOf(other.rule)
    // "half an hour" is found by its word and by its number: one phrase, however it is read.
    if (one.to === other.to) return false
    const ends = this.match(phraseRules[one.rule]!, one.from).map((match) => match.end)
    return ends.indexOf(one.to) < ends.indexOf(other.to)
  }

  /** Dynamic programming from the end: most covered words first, then fewest phrases, then the rules' own order. */
  private choose(phrases: readonly Phrase[]): Phrase[] {
    const { entries } = this.draft
    const { length } = entries
    const scores = new Array<number>(length + 1).fill(0)
    const picks = new Array<Phrase | null>(length + 1).fill(null)
    const skips = skipsIn(entries)
    let last = phrases.length - 1
    for (let at = length - 1; at >= 0; at -= 1) {
      let score = scores[at + 1]!
      let pick: Phrase | null = null
      for (; last >= 0 && phrases[last]!.from === at; last -= 1) {
        const phrase = phrases[last]!
        const covered = 100 * (phrase.to - at) - (skips ? skips[phrase.to]! - skips[at]! : 0) * skipCosts[phrase.rule]!
        const own = scores[phrase.to]! + covered - phrase.doubt * 30 + bonuses[phrase.rule]!
        if (own > score || (pick && own === score && this.isEarlier(phrase, pick))) {
          score = own
          pick = phrase
        }
      }
      scores[at] = score
      picks[at] = pick
    }
    const chosen: Phrase[] = []
    for (let at = 0; at < length; at = picks[at]?.to ?? at + 1) if (picks[at]) chosen.push(picks[at]!)
    return chosen
  }
}

/** The phrases without the one that the finder saw and the matcher did not, or with the doubt that the matcher found. */
const withRight = (phrases: readonly Phrase[], wrong: Phrase, right: Island | null): Phrase[] =>
  phrases.flatMap((one) => (one !== wrong ? [one] : right ? [{ ...one, doubt: right.doubt }] : []))

/** How many words before each place may be stepped over; null when none may. */
function skipsIn(entries: readonly WordEntry[]): number[] | null {
  if (!entries.some((entry) => entry.isSkippable)) return null
  const sums = [0]
  for (const entry of entries) sums.push(sums.at(-1)! + (entry.isSkippable ? 1 : 0))
  return sums
}

/** What follows a "which" that asks nothing. */
const isRemark =
  /^(is|was|isn't|wasn't|seems|looks|makes|passes|means|i|we|will|would|should|ought)\b(?! (it|that|the|this|one|you)$)/

/** Rules whose phrases count only where `isSensible` says so. */
const lookedAt = new Set([
  "guards.question",
  "quantity.foreign",
  "quantity.pipe",
  "quantity.lost",
  "length.length",
  "distance.distance",
])
const grammars = phraseRules.map(bitOfRule)
/** Rules whose phrases need no second look. */
const isPlain = phraseRules.map((rule, at) => at < islandRules.length && !lookedAt.has(rule))
/** What a small word counts less than the hundred of any other; in talk it counts nearly as much. */
const skipCosts = phraseRules.map((rule) => (/^(guards|answers|repairs|commands|notes)/.test(rule) ? 25 : 80))
/** What a value belongs to is told by these: a longer phrase must not swallow them. */
const names = new Set(["parts.part", "parts.earthing", "parts.notPart"])
/** What the last rule of the list gives away against the first: less than the least word is worth. */
const mostRankCost = 34

/** In parts that add up exactly, so that equal scores are equal and the order of the rules decides. */
const rankCost = (rule: string) =>
  Math.round((islandRules.indexOf(rule) / islandRules.length) * mostRankCost * 256) / 256

const bonuses = phraseRules.map((rule) => (names.has(rule) ? 30 : 0) - 40 - rankCost(rule))

/** Answers to one question stand before all other rules. */
const orderOf = (rule: number) => (rule < islandRules.length ? rule : rule - phraseRules.length)

const givenNumber = (end: number): readonly GivenMatch[] => (end > 0 ? [{ end, tags: [] }] : [])
