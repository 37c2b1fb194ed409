/**
 * What is known of one word wherever it stands, worked out once and then looked up: how grammars spell it, which phrases
 * it may begin, whether it is a number word. Words come from talk without end, so only so many are kept.
 */
import type { GrammarMatcher } from "../grammar/GrammarMatcher"
import type { PhraseFinder, PlaceClass } from "../grammar/PhraseFinder"
import type { WordForm } from "../grammar/WordRow"
import { gluedPieces } from "./gluedPieces"
import type { Leftover } from "./Leftover"
import { type Figure, readFigure } from "./readFigure"
import type { NumberRole } from "./readNumberWords"
import type { WordBook } from "./WordBook"
import { traitsOf } from "./wordTraits"

export interface WordEntry {
  /** As the grammars spell it; a "'s" stays on. */
  word: string
  /** Ways to read it in a phrase. */
  forms: readonly WordForm[]
  /** Itself only, as figures and words inside a number are read. */
  plainForms: readonly WordForm[]
  /** Its class in free speech, where a number begins with it, and inside a number. */
  free: PlaceClass
  opening: PlaceClass
  inside: PlaceClass
  /** What it is as a piece of a number. */
  number: { role: NumberRole; value: number } | null
  isSkippable: boolean
  /** What it is when no phrase takes it; chatter behind "by the" is neutral. */
  sort: Leftover
  /** Whether it may be heard for a number before a unit, or for the point. */
  mayCount: boolean
  mayBePoint: boolean
  /** Whether it, or it with the word before, may be heard for a part. */
  mayBePart: boolean
  /** Without a "'s". */
  plain: string
  /** What it can be a sign of; see `trait`. */
  traits: number
  /** Of a figure: what it says by itself. */
  figure: Figure | null
  /** The words that an engine glued into it; null when it is one word. */
  pieces: readonly string[] | null
}

/** Words kept; a trade's own are a few thousand. */
const mostWords = 20_000
const denial =
  /..(n't|nae)$|^(is|are|was|were|have|has|had|hev|do|does|did|ca|could|wo|would|should|must|might|need|ai)nt$/
const trustDoubt = { sure: 0, asked: 1, doubt: 2 } as const

export class Lexicon {
  private readonly words = new Map<string, WordEntry>()
  private readonly figures = new Map<string, WordEntry>()
  /** Last words of what is heard for a part. */
  private readonly partEnds: ReadonlySet<string>

  constructor(
    private readonly matcher: GrammarMatcher,
    private readonly finder: PhraseFinder,
    private readonly book: WordBook,
  ) {
    this.partEnds = new Set([...book.soundAlikes.part.keys()].map((heard) => heard.replace(/^.* /, "")))
  }

  /** All about the word of a token. */
  of(text: string, isFigure: boolean): WordEntry {
    const entries = isFigure ? this.figures : this.words
    const known = entries.get(text)
    if (known) return known
    const entry = isFigure ? this.figure(text) : this.word(text)
    if (entries.size >= mostWords) entries.clear()
    entries.set(text, entry)
    return entry
  }

  private figure(text: string): WordEntry {
    const plainForms = [{ word: this.matcher.words.idOf(text), doubt: 0 }]
    const place = this.finder.classOf(plainForms, false)
    const places = { free: place, opening: place, inside: place }
    const known = { number: null, isSkippable: false, sort: "unknown", mayCount: false, mayBePoint: false } as const
    const plain = { mayBePart: false, plain: text, word: text, traits: 0, figure: readFigure(text), pieces: null }
    return { ...plain, forms: plainForms, plainForms, ...places, ...known }
  }

  private word(text: string): WordEntry {
    const { book, finder } = this
    const word = spelled(text, book)
    const plainForms = [{ word: this.matcher.words.idOf(word), doubt: 0 }]
    const forms = this.formsOf(word, plainForms)
    const isSkippable = book.list("skippable").has(word)
    const number = numberOf(word, book)
    const sort = sortOf(word, book)
    return {
      word,
      forms,
      plainForms,
      free: finder.classOf(forms, isSkippable),
      opening: finder.classOf(forms, false),
      inside: finder.classOf(plainForms, isSkippable),
      number,
      isSkippable,
      sort,
      mayCount: book.soundAlikes.beforeUnit.has(word),
      mayBePoint: book.soundAlikes.point.has(word),
      mayBePart: this.partEnds.has(word.replace(/'s$/, "")),
      plain: word.replace(/'s$/, ""),
      traits: traitsOf(word, book),
      figure: null,
      pieces: number || sort !== "unknown" || forms.some((one) => one.word > 0) ? null : gluedPieces(word, book),
    }
  }

  /** The words a place can be read as. */
  private formsOf(word: string, plainForms: readonly WordForm[]): WordForm[] {
    const forms = [...plainForms]
    const add = (meant: string, doubt: number) => forms.push({ word: this.matcher.words.idOf(meant), doubt })
    if (word.endsWith("'s") && word.length > 3) add(word.slice(0, -2), 0)
    // "hevn't", "shouldnae", "didnt": whatever verb it is, it denies.
    if (plainForms[0]!.word === 0 && denial.test(word)) add("not", 0)
    for (const place of ["phrase", "unit"] as const) {
      const meaning = this.book.soundAlikes[place].get(word)
      if (meaning) add(meaning.meant, trustDoubt[meaning.trust])
    }
    return forms
  }
}

function spelled(text: string, book: WordBook): string {
  const known = book.soundAlikes.spelling.get(text)
  if (known) return known.meant
  const bare = text.endsWith("'s") ? book.soundAlikes.spelling.get(text.slice(0, -2)) : undefined
  return bare ? `${bare.meant}'s` : text
}

function sortOf(word: string, book: WordBook): Leftover {
  const plain = word.replace(/'s$/, "")
  if (book.list("chatter").has(word) || book.list("chatter").has(plain)) return "chatter"
  if (book.list("skippable").has(word)) return "skippable"
  return book.list("neutral").has(word) || book.list("neutral").has(plain) ? "neutral" : "unknown"
}

/** A number word, also in the plural ("thirty fives"), with its verb ("sixteen's what it says") or glued ("twentyfive"). */
export function numberOf(word: string, book: WordBook): { role: NumberRole; value: number } | null {
  const known = book.numberWords.get(word) ?? plural(word, book) ?? withVerb(word, book)
  if (known) return known
  const glued =
    /^(twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(one|two|three|four|five|six|seven|eight|nine)$/.exec(word)
  if (!glued) return null
  const value = book.numberWords.get(glued[1]!)!.value + book.numberWords.get(glued[2]!)!.value
  return { role: "teen", value }
}

/** "one's in ten" speaks of one of several. */
function withVerb(word: string, book: WordBook) {
  const known = word.endsWith("'s") && word !== "one's" ? book.numberWords.get(word.slice(0, -2)) : undefined
  return known && ["digit", "teen", "ty"].includes(known.role) ? known : undefined
}

function plural(word: string, book: WordBook) {
  const known = /^(?!ones$|zeros$|noughts$|halves$)\w+s$/.test(word)
    ? book.numberWords.get(word.replace(/(?:(?<=x)e|)s$/, "").replace(/tie$/, "ty"))
    : undefined
  return known && ["digit", "teen", "ty"].includes(known.role) ? known : undefined
}
