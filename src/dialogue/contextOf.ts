/** What the interpreter and the ear are told about the moment: what was asked, of what, and what was read back. */
import type { Context } from "../facts/Interpretation"
import { fixedItems, knownServices } from "../facts/Item"
import type { DialogueState } from "./DialogueState"
import { isOverdue } from "./loneWorker"
import { slotNamed } from "./spelling"

/** Items whose names everybody knows. */
const given = new Set<string>([...knownServices, ...fixedItems, "electrode", "job"])

export const contextOf = (state: DialogueState, at: string): Context => {
  const { question, readBack } = state
  const current = question?.item ?? state.item
  const named = state.record.items.filter((one) => !given.has(one))
  const { misheard } = state
  const item = {
    ...(current && { item: current }),
    ...(named.length > 0 && { named }),
    ...(misheard.length > 0 && { misheard: [...misheard] }),
  }
  // While a check-in waits for its answer, a yes is meant for it and must not confirm a value.
  if (isOverdue(state.loneWorker)) return { ...item, asked: "check_in", now: at }
  if (question) {
    const isSpelled = state.spelled === slotNamed(question.kind, question.item)
    const digits = isSpelled && { digits: true }
    const proposed = question.candidates.length === 1 ? { asked: "confirm", readback: question.candidates[0]! } : null
    return { ...item, ...(proposed ?? { asked: question.kind }), ...digits, now: at }
  }
  const main = readBack && state.record.entries.find((held) => held.entry === readBack.main)
  if (!main) return { ...item, now: at }
  return {
    ...item,
    asked: "confirm",
    readback: main.fact,
    ...(main.slot === state.spelled && { digits: true }),
    now: at,
  }
}
