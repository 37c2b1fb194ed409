/**
 * The words of one listening out of a browser's list of results. The list cannot be taken as it stands: Chrome on Android
 * adds an entry for every partial, each restating those before it and marked final (S01), the last may glue all others
 * together, and an iPhone's final may be blank. So the whole list is folded anew at every event, by whole words.
 * Folding never crosses two listenings: a reading that is said twice stays twice.
 */

/** One entry of the list, as far as it is looked at. */
export interface ResultEntry {
  text: string
  isFinal: boolean
  /** Other readings, best first. */
  others: readonly string[]
}

export interface Folded {
  text: string
  /** Whether the last words were called final. Only a hint: some browsers say so of every partial, some never. */
  isFinal: boolean
  others: string[]
}

/** Words for comparing: small letters, no stops at their edges. */
export const plainWords = (text: string): string[] =>
  text
    .toLowerCase()
    .split(/\s+/)
    .map((word) => word.replace(/^[.,!?;:]+|[.,!?;:]+$/g, ""))
    .filter((word) => word !== "")

/** Whether `text` says all of `start` and perhaps goes on. */
export const goesOnFrom = (text: string, start: string): boolean => {
  const [words, first] = [plainWords(text), plainWords(start)]
  return first.length <= words.length && first.every((word, at) => word === words[at])
}

/** Spaces put right, and stops taken off the end of each piece; the words themselves are left as they came. */
const tidy = (text: string): string =>
  text
    .trim()
    .replace(/\s+/g, " ")
    .replace(/[.,!?;:]+$/, "")

export const foldResults = (entries: readonly ResultEntry[]): Folded => {
  const kept: ResultEntry[] = []
  for (const entry of entries) {
    if (plainWords(entry.text).length === 0) continue
    const whole = kept.map((one) => one.text).join(" ")
    if (kept.length > 1 && goesOnFrom(entry.text, whole)) kept.splice(0, kept.length, entry)
    else if (kept.length > 0 && goesOnFrom(entry.text, kept.at(-1)!.text)) kept.splice(-1, 1, entry)
    else kept.push(entry)
  }
  const last = kept.at(-1)
  return {
    text: kept.map((one) => tidy(one.text)).join(" "),
    isFinal: last?.isFinal ?? false,
    // Other readings of a piece are no readings of the whole.
    others: kept.length === 1 ? last!.others.map(tidy) : [],
  }
}
