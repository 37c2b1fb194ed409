/** Which steps are about one item; the leads and the isolation belong to the whole job. */
import type { Step } from "../../src/facts/Fact"

export const takesSubjectStep = (step: Step): boolean => step !== "leads_nulled" && step !== "isolated_proved_dead"
