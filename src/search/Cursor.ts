/** A place in a query that moves on over what is read. Patterns are tried at the place itself and end at a word's end. */
export class Cursor {
  /** Patterns are few and tried at every word; making one anew each time took most of the time of a search. */
  private static readonly made = new Map<string, RegExp>()

  constructor(
    /** Lower case, as long as the text it stands for. */
    readonly text: string,
    public at = 0,
  ) {}

  /** Moves over the pattern and the space behind it, or stays and gives null. */
  take(pattern: string): RegExpExecArray | null {
    const known = Cursor.made.get(pattern)
    const whole = known ?? new RegExp(`(?:${pattern})(?![\\p{L}\\p{N}])\\s*`, "uy")
    if (!known) Cursor.made.set(pattern, whole)
    whole.lastIndex = this.at
    const match = whole.exec(this.text)
    if (match) this.at += match[0].length
    return match
  }

  /** Where what was read ends, without the space behind it. */
  get end(): number {
    return this.text.slice(0, this.at).trimEnd().length
  }

  /** Tries a reading; where it gives null, the cursor stands where it stood. */
  attempt<T>(read: () => T | null): T | null {
    const before = this.at
    const result = read()
    if (result === null) this.at = before
    return result
  }
}
