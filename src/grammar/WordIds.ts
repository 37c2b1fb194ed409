/**
 * Every word of a grammar as a small number, so that matching compares numbers and never text. 0 is any word that the
 * grammar does not hold: nothing begins with it.
 */

export class WordIds {
  private readonly ids = new Map<string, number>()

  /** The number of a grammar word; made when the grammar is compiled. */
  add(word: string): number {
    const known = this.ids.get(word)
    if (known !== undefined) return known
    const id = this.ids.size + 1
    this.ids.set(word, id)
    return id
  }

  /** The number of any word that was heard; 0 when no rule holds it. */
  idOf(word: string): number {
    return this.ids.get(word) ?? 0
  }
}
