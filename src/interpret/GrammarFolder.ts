/** The `grammars/` folder, read once: linked rules, word lists, pronunciations and sound-alikes. */
import { type GrammarSet, linkGrammars } from "../grammar/linkGrammars"
import { parseJsgf } from "../grammar/parseJsgf"
import { type Homophone, readHomophones } from "./readHomophones"
import { readLines } from "./readLines"
import { type NumberRole, readNumberWords } from "./readNumberWords"

/** Files by their path inside `grammars/`, as text. */
export type GrammarFiles = Readonly<Record<string, string>>

export interface GrammarFolder {
  set: GrammarSet
  /** Word lists by file name without ending: what kind of word it is. */
  lists: ReadonlyMap<string, ReadonlySet<string>>
  pronunciations: ReadonlyMap<string, readonly string[]>
  homophones: readonly Homophone[]
  numberWords: ReadonlyMap<string, { role: NumberRole; value: number }>
}

/** Reads all files of one language. Throws for a broken folder: a mistake of ours, found by the first test that runs. */
export function readGrammarFolder(files: GrammarFiles, language = "en-GB"): GrammarFolder {
  const inLanguage = Object.entries(files).filter(([path]) => path.startsWith(`${language}/`))
  const grammars = inLanguage.filter(([path]) => path.endsWith(".jsgf")).map(([path, text]) => parseJsgf(text, path))
  const lists = inLanguage
    .filter(([path]) => path.endsWith(".txt"))
    .map(([path, text]) => [path.replace(/^.*\/|\.txt$/g, ""), new Set(readLines(text))] as const)
  return {
    set: linkGrammars(grammars),
    lists: new Map(lists),
    pronunciations: readPronunciations(files["pronunciations.tsv"] ?? ""),
    homophones: readHomophones(files["homophones.tsv"] ?? ""),
    numberWords: readNumberWords(files[`${language}/numberWords.tsv`] ?? ""),
  }
}

function readPronunciations(text: string): Map<string, string[]> {
  const all = new Map<string, string[]>()
  for (const line of readLines(text)) {
    const [word, phones] = line.split("\t")
    if (!word || !phones) throw new Error(`pronunciations.tsv: "${line}" lacks a tab`)
    all.set(word, [...(all.get(word) ?? []), phones.trim()])
  }
  return all
}
