/** What the worker has been told and has not answered. */
import type { Finding } from "../facts/Finding"
import { awaitingYes } from "../record/holding"
import { openWarnings, warningKey } from "../record/warningKey"
import type { DialogueState } from "./DialogueState"

/** Open warnings that were spoken and met with silence, worst first. */
export const unansweredWarnings = ({ record, checked }: DialogueState): Finding[] => {
  const silent = new Set(record.warnings.filter((one) => one.answered === null).map((one) => one.warning))
  return openWarnings(record, checked.findings).filter((finding) => silent.has(warningKey(finding)))
}

/** Whether something waits for a yes or a part that the warning is not about. */
export const waitsBeside = ({ record, homeless }: DialogueState, warning: Finding): boolean =>
  homeless !== null || awaitingYes(record).some((held) => !warning.rests.includes(held.entry))

/** Whether a reminder is due once it has been quiet for a while. */
export const isWaitedFor = (state: DialogueState): boolean =>
  unansweredWarnings(state).length > 0 || awaitingYes(state.record).length > 0 || state.homeless !== null
