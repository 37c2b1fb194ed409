/** The interpreter with the grammars that ship, made once for all tests. */
import { readGrammars } from "../../src/cli/readGrammars"
import { createInterpreter } from "../../src/interpret/createInterpreter"

export const files = readGrammars()
export const interpreter = createInterpreter(files)
