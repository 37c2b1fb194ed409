/** Something still to be said, in a word or two for the screen. */
import type { Wanted } from "../../dialogue/JobPlan"
import type { Step } from "../../facts/Fact"
import { sayKind } from "../../interpret/sayKind"
import { showStep } from "../parts/showStep"

/** "reading", "label fitted". */
export const showWanted = (wanted: Wanted): string =>
  wanted.startsWith("step:") ? showStep(wanted.slice(5) as Step).toLowerCase() : sayKind(wanted)
