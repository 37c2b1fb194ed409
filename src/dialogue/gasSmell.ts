/** A smell of gas goes before everything else, and is answered as loud as it goes each time that it is reported. */
import type { RecordedFact } from "../facts/Fact"
import type { Heard } from "../facts/Heard"
import type { Turn } from "./Turn"

/** The usual advice in a gas emergency; local rules come first. */
export const sayGasSmell = (turn: Turn): void => {
  turn.sound("warning")
  turn.say(
    "Stop work. Get out, and take everybody with you. No switches, no sparks. Ring the gas emergency line from outside.",
    [],
    true,
  )
}

/** Whether a note tells of it: its words are read once more as if they had been said by themselves. */
export const isOfGasSmell = (turn: Turn, fact: RecordedFact, heard: Heard): boolean =>
  fact.kind === "note" &&
  turn.tools.interpret({ ...heard, text: fact.value, alternatives: [], words: [] }, {}).command?.kind === "smells_gas"
