/** What an ear must be able to hear: one flat JSGF text with one public rule, and how its words sound. */
export interface EarGrammar {
  /** Names this grammar, so that one already loaded is not loaded again. */
  id: string
  /** No imports, no tags needed, one public rule, lower case only. */
  jsgf: string
  /** Word and ARPAbet phones; several lines for several ways of saying one word. Only words that need them. */
  pronunciations: ReadonlyArray<readonly [word: string, phones: string]>
  /** What was heard before and said to be wrong: it is hardly what is said next. */
  unlikely?: readonly string[]
}
