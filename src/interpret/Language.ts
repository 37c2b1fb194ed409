/** One language ready to be read: its compiled grammar, its word tables, and what is worked out once from both. */
import { GrammarMatcher } from "../grammar/GrammarMatcher"
import { PhraseFinder } from "../grammar/PhraseFinder"
import type { GrammarFolder } from "./GrammarFolder"
import { askedRules, islandRules, numberRule } from "./islandRules"
import { Lexicon } from "./Lexicon"
import { PhraseMemo } from "./PhraseMemo"
import { openWordBook, type WordBook } from "./WordBook"

export interface Language {
  matcher: GrammarMatcher
  /** Finds the phrases of `phraseRules`. */
  finder: PhraseFinder
  lexicon: Lexicon
  memo: PhraseMemo
  book: WordBook
}

/** All rules that are looked for, those of one question last; a phrase tells its rule by the place in this list. */
export const phraseRules: readonly string[] = [...islandRules, ...Object.values(askedRules).flat()]

/** Compiles a folder. */
export function openLanguage(folder: GrammarFolder): Language {
  const matcher = new GrammarMatcher(folder.set, new Set([numberRule]))
  const finder = new PhraseFinder(matcher, phraseRules)
  const book = openWordBook(folder)
  return { matcher, finder, lexicon: new Lexicon(matcher, finder, book), memo: new PhraseMemo(), book }
}
