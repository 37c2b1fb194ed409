/**
 * A row of words to be matched, as the grammar sees it: each place may be read in several ways, a caller may have read
 * some rules already (numbers, for one), and there are edges that no phrase may cross. Words are numbers (`WordIds`).
 */

export interface WordForm {
  /** Number of the word; 0 for one that no rule holds. */
  word: number
  /** 0 as written; up to 3, higher the less this reading of the place can be trusted on its own. */
  doubt: number
}

/** A tag with the places of the words that it stands on. */
export interface PlacedTag {
  text: string
  from: number
  /** Place after the last word. */
  to: number
}

export interface GivenMatch {
  end: number
  tags: readonly PlacedTag[]
}

export interface WordRow {
  length: number
  /** Ways of reading one place; where a given rule begins, its form (`formOf`) is among them. */
  forms: ReadonlyArray<readonly WordForm[]>
  /** Whether the word at this place may be stepped over inside a phrase ("er", "like"). */
  isSkippable(at: number): boolean
  /** Whether a phrase may not run from the place before into this one. */
  isEdge(at: number): boolean
  /** Matches of a rule (full name) that the caller reads itself; undefined where the grammar's own text counts. */
  given(rule: string, at: number): readonly GivenMatch[] | undefined
}

export interface Match {
  /** Place after the last word. */
  end: number
  tags: readonly PlacedTag[]
  /** The highest doubt of any word used. */
  doubt: number
}
