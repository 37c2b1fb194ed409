/**
 * A doubt without what the worker has just said no to: asked for a value again, he does not mean the one that he took
 * back, so that of two which sound alike the other is put forward. Where none is left, an ear that was in doubt is not
 * believed; what is plain or was spelled, he may have meant after all.
 */
import { type Heard, sureMargin } from "../facts/Heard"
import type { Interpretation } from "../facts/Interpretation"
import { heldIn } from "../record/holding"
import { slotOf } from "../record/slotOf"
import { candidatesOf } from "./candidatesOf"
import type { DialogueState } from "./DialogueState"
import { isDenied } from "./isDenied"
import { slotNamed } from "./spelling"

export const withoutDenied = (state: DialogueState, reading: Interpretation, heard: Heard | null): Interpretation => {
  const { question, record } = state
  const { ask } = reading
  if (!question || !ask?.candidates || ask.kind !== question.kind) return reading
  const factOf = (candidate: number | string) => candidatesOf({ ...ask, candidates: [candidate] }, question.item)[0]
  const isInDoubt = heard?.margin != null && heard.margin < sureMargin
  const mayBeNone = isInDoubt && state.spelled !== slotNamed(question.kind, question.item)
  const first = ask.candidates[0] === undefined ? undefined : factOf(ask.candidates[0])
  if (!first || heldIn(record, slotOf(first, ""))) return reading
  const candidates = ask.candidates.filter((one) => {
    const fact = factOf(one)
    return fact && !isDenied(state, fact)
  })
  return candidates.length > 0 || mayBeNone ? { ...reading, ask: { ...ask, candidates } } : reading
}
