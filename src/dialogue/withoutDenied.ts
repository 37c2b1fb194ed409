/**
 * A doubt without what the worker has just said no to: asked for a value again, he does not mean the one that he took
 * back, so that of two which sound alike the other is put forward.
 */
import type { Interpretation } from "../facts/Interpretation"
import { heldIn, lastIn } from "../record/holding"
import { slotOf } from "../record/slotOf"
import { candidatesOf } from "./candidatesOf"
import type { DialogueState } from "./DialogueState"

export const withoutDenied = ({ question, record }: DialogueState, reading: Interpretation): Interpretation => {
  const { ask } = reading
  if (!question || !ask?.candidates || ask.kind !== question.kind) return reading
  const factOf = (candidate: number | string) => candidatesOf({ ...ask, candidates: [candidate] }, question.item)[0]
  const first = ask.candidates[0] === undefined ? undefined : factOf(ask.candidates[0])
  const slot = first && slotOf(first, "")
  const last = slot ? lastIn(record, slot) : undefined
  if (last?.withdrawn !== "denied" || heldIn(record, last.slot)) return reading
  const candidates = ask.candidates.filter((one) => factOf(one)?.value !== last.fact.value)
  return candidates.length > 0 ? { ...reading, ask: { ...ask, candidates } } : reading
}
