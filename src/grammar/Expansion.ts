/**
 * The pieces of a JSGF grammar, as a tree. A `ref` holds the written name after reading and the full name
 * (`file.rule`) after linking; everything after linking relies on the full name.
 */

export type Expansion =
  | { type: "word"; word: string }
  | { type: "ref"; rule: string }
  | { type: "sequence"; items: readonly Expansion[] }
  | { type: "choice"; items: readonly Expansion[]; weights: readonly number[] | null }
  | { type: "optional"; item: Expansion }
  /** `least` is 0 for `*` and 1 for `+`. */
  | { type: "repeat"; item: Expansion; least: 0 | 1 }
  | { type: "tagged"; item: Expansion; tags: readonly string[] }

export interface Rule {
  name: string
  isPublic: boolean
  /** The comment before the rule without its `@example` lines. */
  about: string
  /** Sentences that this rule must win. */
  examples: readonly string[]
  expansion: Expansion
}

export interface GrammarFile {
  /** Name from the `grammar` line. */
  name: string
  language: string
  /** Full names of imported rules; `file.*` imports all public ones. */
  imports: readonly string[]
  rules: readonly Rule[]
}
