/** The interpreter and the checker as the commands use them: grammars from disk, and the pack of that id. */
import type { Tools } from "../dialogue/Tools"
import { done, type Outcome, refuse } from "../facts/Outcome"
import { createInterpreter, type Interpreter } from "../interpret/createInterpreter"
import { createChecker } from "../rules/createChecker"
import { findPack, packs } from "../rules/packs"
import { readGrammars } from "./readGrammars"

export interface LoopTools extends Omit<Tools, "newId"> {
  interpreter: Interpreter
}

export const loadLoopTools = (packId: string): Outcome<LoopTools> => {
  const pack = findPack(packId)
  if (!pack) return refuse(`There is no rule pack "${packId}". There are: ${packs.map((one) => one.id).join(", ")}.`)
  const checker = createChecker(pack)
  const interpreter = createInterpreter(readGrammars())
  return done({
    interpreter,
    interpret: (heard, context) => interpreter.interpret(heard, context),
    check: (situation) => checker.check(situation),
  })
}
