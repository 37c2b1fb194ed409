/**
 * Whether what was heard while the app spoke may be the app's own words, well or badly heard. It errs towards yes: what is
 * dropped is asked for again, and what is taken could write. Half of the words in the order of a sentence are enough.
 */

const wordsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .replace(/[^a-z0-9' ]+/g, " ")
    .split(" ")
    .filter((word) => word !== "")

/** How many words two rows share in the same order (longest common subsequence). */
const sharedInOrder = (some: readonly string[], others: readonly string[]): number => {
  let row = others.map(() => 0)
  for (const word of some) {
    const before = row
    row = []
    for (const [at, other] of others.entries()) {
      const diagonal = before[at - 1] ?? 0
      row.push(word === other ? diagonal + 1 : Math.max(before[at]!, row[at - 1] ?? 0))
    }
  }
  return row.at(-1) ?? 0
}

/** `said` holds the sentences that were being said meanwhile. */
export const mayBeOwnWords = (said: readonly string[], heard: string): boolean => {
  const words = wordsOf(heard)
  return words.length > 0 && 2 * sharedInOrder(words, wordsOf(said.join(" "))) >= words.length
}
