/** The loop before any job is open. */
import { emptyRecord } from "../record/JobRecord"
import type { DialogueState } from "./DialogueState"
import { notChecked } from "./loneWorker"
import { usualPreferences } from "./Preferences"

export const emptyDialogue = (device: string, by = "worker", preferences = usualPreferences): DialogueState => ({
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
  faint: null,
  spelled: null,
  refused: [],
  heardAs: null,
  misheard: [],
  troubles: { faintAnswers: 0, readings: 0 },
  doubt: null,
  preferences,
  loneWorker: notChecked,
  pages: [],
  unheard: false,
})
