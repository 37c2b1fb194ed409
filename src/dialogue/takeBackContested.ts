/**
 * A value that waits for a yes and is met with another one, in doubt, of the same field: whatever the new one turns out to
 * be, the old one was not meant. Left standing, it would come back when the new one is denied.
 */
import type { Ask } from "../facts/Interpretation"
import { sayFacts } from "./sayFacts"
import type { Turn } from "./Turn"
import { withdraw, withSameValue } from "./withdraw"

export const takeBackContested = (turn: Turn, ask: Ask): void => {
  const { readBack, question } = turn.state
  if (question || !(readBack?.needsYes || (readBack && ask.isSameAgain)) || turn.heard?.margin == null) return
  const fact = turn.fact(readBack.main)
  const { candidates = [] } = ask
  if (fact?.kind !== ask.kind || candidates.length === 0 || candidates.some((one) => one === fact.value)) return
  const gone = withdraw(turn, withSameValue(turn, [readBack.main]), "denied").slice(-1)
  const entries = readBack.entries.filter((entry) => entry !== readBack.main)
  turn.set({ readBack: entries[0] ? { ...readBack, entries, main: entries[0] } : null })
  turn.say(`Taken back. ${sayFacts(gone.map((held) => held.fact))}`)
}
