/** Thrown for a grammar that cannot be read: a mistake of ours in `grammars/`, never something a user said. */
export class GrammarError extends Error {
  constructor(
    readonly file: string,
    readonly line: number,
    readonly problem: string,
  ) {
    super(`${file}:${line}: ${problem}`)
  }
}
