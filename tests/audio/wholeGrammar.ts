/** The grammar as the product gives it to the ear, from the folder that ships. */
import { readGrammars } from "../../src/cli/readGrammars"
import type { Context } from "../../src/facts/Interpretation"
import { buildEarGrammar } from "../../src/interpret/buildEarGrammar"
import { readGrammarFolder } from "../../src/interpret/GrammarFolder"

const folder = readGrammarFolder(readGrammars())

export const earGrammar = (context: Context = {}) => buildEarGrammar(folder, context)

/** A context for each grammar that there is. */
export const allContexts: Context[] = [
  {},
  ...[
    "confirm",
    "conductor_csa",
    "neutral_csa",
    "length",
    "distance",
    "resistance",
    "earthing_arrangement",
    "step:clamp_fitted",
    "service",
    "keep_reason",
  ].map((asked) => ({ asked })),
]
