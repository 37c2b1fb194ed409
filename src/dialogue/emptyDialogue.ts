/** The loop before any job is open. */
import { emptyRecord } from "../record/JobRecord"
import type { DialogueState } from "./DialogueState"

export const emptyDialogue = (device: string, by = "worker"): DialogueState => ({
  job: null,
  device,
  by,
  listening: true,
  record: emptyRecord,
  checked: { findings: [], missing: [] },
  item: null,
  question: null,
  readBack: null,
  homeless: null,
  lastHeard: null,
  lastSaid: "",
  lastSentences: [],
  reminders: 0,
  doubt: null,
})
