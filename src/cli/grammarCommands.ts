/** `try`, `sample` and `clashes`: for people who change the grammars. */
import { createInterpreter } from "../interpret/createInterpreter"
import type { Console, ExitStatus } from "./Console"
import { findClashes, sampleSentences, trySentence } from "./grammarTools"
import { readGrammars } from "./readGrammars"

export const tryCommand = async (
  sentence: string,
  context: { asked?: string; item?: string },
  io: Console,
): Promise<ExitStatus> => {
  for (const line of trySentence(createInterpreter(readGrammars()), sentence, context)) io.print(line)
  return 0
}

export const sampleCommand = async (rule: string, count: number, seed: number, io: Console): Promise<ExitStatus> => {
  if (!Number.isInteger(count) || count < 1 || count > 100_000 || !Number.isInteger(seed)) {
    io.complain("The count and the seed must be whole numbers, the count from 1 to 100000.")
    return 2
  }
  const sentences = sampleSentences(readGrammars(), rule, count, seed)
  if (!sentences.ok) {
    io.complain(sentences.because)
    return 2
  }
  for (const sentence of sentences.value) io.print(sentence)
  return 0
}

export const clashesCommand = async (io: Console): Promise<ExitStatus> => {
  const clashes = findClashes(readGrammars())
  for (const { rule, sentence, winner } of clashes) io.print(`${rule}: "${sentence}" is taken by ${winner}`)
  io.print(`${clashes.length} clashes`)
  return clashes.length > 0 ? 1 : 0
}
