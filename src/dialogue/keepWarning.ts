/** Keeps a warned value on purpose. That takes a reason, which stands in the record beside the finding. */

import { sayItem } from "../interpret/sayItem"
import { openWarnings, warningKey } from "../record/warningKey"
import { capital } from "./capital"
import type { Turn } from "./Turn"

/** The warning of that key, else the one that was spoken last and still stands. */
const findOpen = (turn: Turn, key?: string) => {
  const { record, checked } = turn.state
  const open = openWarnings(record, checked.findings)
  const named = open.find((finding) => warningKey(finding) === key)
  if (named) return named
  const spoken = record.warnings.map((one) => one.warning)
  return open.toSorted((a, b) => spoken.indexOf(warningKey(b)) - spoken.indexOf(warningKey(a)))[0]
}

/** Records the reason, or asks for one. `key` names the warning; without it, the last one spoken is meant. */
export const keepWarning = (turn: Turn, reason: string, key?: string): void => {
  const finding = findOpen(turn, key)
  if (!finding) {
    turn.say("No warning is open.")
    return
  }
  const name = finding.item ? `${capital(sayItem(finding.item))}. ` : ""
  if (reason.trim() === "") {
    const words = `${name}Why is it kept? Say keep it because, and the reason.`
    turn.say(words)
    turn.set({
      question: {
        kind: "keep_reason",
        item: finding.item ?? null,
        words,
        because: "a warning is open",
        candidates: [],
        heard: [],
      },
    })
    return
  }
  for (const entry of finding.rests) {
    const held = turn.state.record.entries.find((one) => one.entry === entry)
    if (held && held.accepted === null && held.withdrawn === null && held.needsYes) {
      turn.add({ type: "accepted", entry, how: "said_yes" })
    }
  }
  turn.add({ type: "kept", warning: warningKey(finding), reason: reason.trim().slice(0, 500) })
  turn.set({ question: null, readBack: null })
  turn.say(`${name}Kept, with your reason: ${reason.trim()}. It stands in the record as a warning.`)
}
