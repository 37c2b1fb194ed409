/** The one sentence that the ear is to hear, with the words' sounds as the whole grammar has them. */
import type { EarGrammar } from "../../facts/EarGrammar"
import { grammarOf } from "../../speech/numberWords"

export const grammarOfPrompt = (sentence: string, whole: EarGrammar): EarGrammar => ({
  id: `prompt ${sentence}`,
  jsgf: grammarOf([sentence]),
  pronunciations: whole.pronunciations,
})
