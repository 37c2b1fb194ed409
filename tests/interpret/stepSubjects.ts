/** Which steps are about one item; the others belong to the job, the supply, the terminal or the leads. */
import type { Step } from "../../src/facts/Fact"
import { ownerOfStep } from "../../src/facts/ownerOfStep"

export const takesSubjectStep = (step: Step): boolean => ownerOfStep[step] === undefined
