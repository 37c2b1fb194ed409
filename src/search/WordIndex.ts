/**
 * Which jobs hold which words, found by how a word begins. Jobs speak of the same few thousand words, so a sorted list
 * of words with the places of each is small and quick: see D28 for what libraries would have cost.
 */
export class WordIndex {
  private readonly places = new Map<string, number[]>()
  private sorted: string[] | null = null

  /** Adds the words of one place; places have to come in ascending order, each word once. */
  add(place: number, words: Iterable<string>): void {
    for (const word of words) {
      const known = this.places.get(word)
      if (!known) {
        this.places.set(word, [place])
        this.sorted = null
      } else if (known.at(-1) !== place) known.push(place)
    }
  }

  /** Marks with a 1 in `hits` every place that holds a word beginning so. */
  mark(beginning: string, hits: Uint8Array): void {
    this.sorted ??= [...this.places.keys()].sort()
    for (let at = firstFrom(this.sorted, beginning); this.sorted[at]?.startsWith(beginning); at++)
      for (const place of this.places.get(this.sorted[at]!)!) hits[place] = 1
  }
}

/** Where the first word stands that does not come before this one. */
const firstFrom = (words: readonly string[], wanted: string): number => {
  let [low, high] = [0, words.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if (words[middle]! < wanted) low = middle + 1
    else high = middle
  }
  return low
}
