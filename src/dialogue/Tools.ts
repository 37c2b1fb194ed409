/** What the loop is given from outside, so that it stays pure: the interpreter, the checker and a source of ids. */
import type { Checked } from "../facts/Finding"
import type { Heard } from "../facts/Heard"
import type { Context, Interpretation } from "../facts/Interpretation"
import type { Situation } from "../facts/Situation"
import type { JobPlan } from "./JobPlan"

export interface Tools {
  interpret(heard: Heard, context: Context): Interpretation
  check(situation: Situation): Checked
  /** A new unique id; in tests, the next of a row. */
  newId(): string
  /** What a whole job of this kind holds; the plan of earthing and bonding where none is given. */
  plan?: JobPlan
}
