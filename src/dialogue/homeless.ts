/**
 * Values that were heard without a part to belong to. They are on no record until a part is named, so none of them may
 * go without a word: the next part that is named takes them, or the worker hears that they were let go.
 */
import type { RecordedFact } from "../facts/Fact"
import { itemOf } from "../record/slotOf"
import { askFor } from "./askFor"
import { sayFacts } from "./sayFacts"
import type { Turn } from "./Turn"
import { withSubject } from "./withSubject"

/** Keeps more of them beside those that wait already; a later value of one kind takes the place of the earlier. */
export const keepHomeless = (turn: Turn, facts: readonly RecordedFact[], heard: readonly string[]): void => {
  const before = turn.state.homeless
  const kept = (before?.facts ?? []).filter((one) => !facts.some((fact) => fact.kind === one.kind))
  const from = [...new Set([...(before?.heard ?? []), ...heard])]
  turn.set({ homeless: { facts: [...kept, ...facts], heard: from } })
}

/** Facts that waited for a part join the part that is named at last, before what is said of it now. */
export const adopt = (turn: Turn, facts: readonly RecordedFact[]): readonly RecordedFact[] => {
  const { homeless } = turn.state
  const part = facts.find((fact) => fact.kind === "service")
  if (!homeless || !part) return facts
  turn.set({ homeless: null })
  const now = facts.filter((fact) => fact !== part)
  const isSaidNow = (kind: string) => now.some((one) => one.kind === kind && [null, part.value].includes(itemOf(one)))
  const waited = homeless.facts.filter((fact) => !isSaidNow(fact.kind))
  return [part, ...waited.map((fact) => withSubject(fact, part.value)), ...now]
}

/** Says what waits, and asks which part it is for. */
export const askForPart = (turn: Turn): void => {
  const { homeless } = turn.state
  if (!homeless) return
  askFor(turn, "service", null, { lead: sayFacts(homeless.facts) })
  const { question } = turn.state
  if (question) turn.set({ question: { ...question, heard: homeless.heard } })
}

/** Lets them go, aloud; tells whether there were any. */
export const letGo = (turn: Turn): boolean => {
  const { homeless } = turn.state
  if (!homeless) return false
  turn.set({ homeless: null })
  const words = sayFacts(homeless.facts)
  turn.say(`Not taken down: ${words.charAt(0).toLowerCase()}${words.slice(1)}`)
  return true
}
