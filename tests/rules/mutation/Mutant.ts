/** One small change to one source file of the rules, which some test ought to notice. */
export interface Mutant {
  /** Path from the project's root. */
  file: string
  /** Line, and what is written there now and with the change. */
  line: number
  was: string
  becomes: string
  /** The whole text of the file with the change in it. */
  text: string
}

/** A name that stays the same while lines move: file, was, becomes. */
export const nameOf = ({ file, was, becomes, line }: Mutant) => `${file}:${line} ${was} → ${becomes}`
