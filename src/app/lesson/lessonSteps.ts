/**
 * The first lesson: what to say, and how to see that it was understood. It runs on the real loop with a store that
 * forgets, so the worker meets what a job brings; none of it ever becomes a line of a job.
 */
import type { DialogueState } from "../../dialogue/DialogueState"
import { heldFact } from "../../record/holding"
import { isWarning, openWarnings } from "../../record/warningKey"

export interface LessonStep {
  title: string
  /** What the app says to bring it about; it ends in the words to repeat. */
  lead: string
  /** The words to say after it. */
  words: string
  /** What is worth knowing about it. */
  about: string
  isDone(state: DialogueState): boolean
}

const gasMm2 = ({ record }: DialogueState) => heldFact(record, "gas", "conductor_csa")?.fact.value

const isWarned = ({ record, checked }: DialogueState) =>
  openWarnings(record, checked.findings).some((finding) => finding.item === "water")

const wasWarned = ({ checked }: DialogueState) =>
  checked.findings.some((finding) => isWarning(finding) && finding.item === "water")

export const lessonSteps: readonly LessonStep[] = [
  {
    title: "Say what you fitted",
    lead: "Say after me.",
    words: "gas ten square",
    about: "The part first, then what about it. It reads back what it wrote.",
    isDone: (state) => gasMm2(state) !== undefined,
  },
  {
    title: "Put it right",
    lead: "That was wrong. Say after me.",
    words: "no make that sixteen square",
    about: "“No” takes it back; “no, make that …” puts it right in one breath.",
    isDone: (state) => gasMm2(state) === 16,
  },
  {
    title: "Hear a warning",
    lead: "Now a size that is too small. Say after me.",
    words: "water four square",
    about: "Three loud notes, then the value, the limit and what to do. It stays open until you deal with it.",
    isDone: isWarned,
  },
  {
    title: "Keep it on purpose",
    lead: "You can keep it, with a reason. Say after me.",
    words: "keep it because this is practice",
    about: "The reason stands in the record beside the warning. Or give the right size, and it is gone.",
    isDone: (state) => !isWarned(state) && (wasWarned(state) || state.record.warnings.length > 0),
  },
  {
    title: "A reading needs your yes",
    lead: "Now a reading. Say after me, and then say yes.",
    words: "gas nought point nought two ohms",
    about: "Readings, doubts and warnings wait for a yes. Routine values do not: you just go on.",
    isDone: ({ record }) => (heldFact(record, "gas", "resistance")?.accepted ?? null) !== null,
  },
]
