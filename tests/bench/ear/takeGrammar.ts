/** Gives an ear its grammar. A refused one would look like an ear that hears nothing, so it ends the bench. */
import type { EarGrammar } from "../../../src/facts/EarGrammar"

/** Throws where a word has no pronunciation, as in a pack that was made before the word was added. */
export const takeGrammar = (ear: { take(grammar: EarGrammar): { ok: boolean } }, grammar: EarGrammar): void => {
  if (!ear.take(grammar).ok) throw new Error(`The ear refuses the grammar ${grammar.id}. Run: npm run ear`)
}
