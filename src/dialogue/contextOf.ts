/** What the interpreter and the ear are told about the moment: what was asked, of what, and what was read back. */
import type { Context } from "../facts/Interpretation"
import { fixedItems, knownServices } from "../facts/Item"
import type { DialogueState } from "./DialogueState"
import { isOverdue } from "./loneWorker"

/** Items whose names everybody knows. */
const given = new Set<string>([...knownServices, ...fixedItems, "electrode", "job"])

export const contextOf = (state: DialogueState, at: string): Context => {
  const { question, readBack } = state
  const current = question?.item ?? state.item
  const named = state.record.items.filter((one) => !given.has(one))
  const item = { ...(current && { item: current }), ...(named.length > 0 && { named }) }
  // While a check-in waits for its answer, a yes is meant for it and must not confirm a value.
  if (isOverdue(state.loneWorker)) return { ...item, asked: "check_in", now: at }
  if (question) {
    const proposed = question.candidates.length === 1 ? { asked: "confirm", readback: question.candidates[0]! } : null
    return proposed ? { ...item, ...proposed, now: at } : { ...item, asked: question.kind, now: at }
  }
  const main = readBack && state.record.entries.find((held) => held.entry === readBack.main)
  return main ? { ...item, asked: "confirm", readback: main.fact, now: at } : { ...item, now: at }
}
