/** The real interpreter and checker, read from disk once, for tests that go through the whole loop. */
import { readGrammars } from "../src/cli/readGrammars"
import type { Tools } from "../src/dialogue/Tools"
import { createInterpreter, type Interpreter } from "../src/interpret/createInterpreter"
import { createChecker } from "../src/rules/createChecker"
import { findPack } from "../src/rules/packs"

let interpreter: Interpreter | undefined

export const realInterpreter = (): Interpreter => {
  interpreter ??= createInterpreter(readGrammars("grammars"))
  return interpreter
}

export const realTools = (): Omit<Tools, "newId"> => {
  const checker = createChecker(findPack("uk-bs7671")!)
  return {
    interpret: (heard, context) => realInterpreter().interpret(heard, context),
    check: (situation) => checker.check(situation),
  }
}
