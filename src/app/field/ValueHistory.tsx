/** What stood in a value's place before, newest first. Nothing is ever overwritten, so all of it is here. */
import type { Held } from "../../record/JobRecord"
import { entryState } from "../parts/entryState"
import { State } from "../parts/Mark"
import { showFact } from "../parts/showFact"
import { showClock } from "../parts/showMoment"

export const ValueHistory = ({ earlier }: { earlier: readonly Held[] }) => {
  if (earlier.length === 0) return null
  return (
    <section className="history" aria-labelledby="history-head">
      <h3 id="history-head">Before that</h3>
      <ol reversed>
        {[...earlier].reverse().map((held) => {
          const { shape, words } = entryState(held)
          return (
            <li key={held.entry}>
              <span className="value">{showFact(held.fact).value}</span>
              <State shape={shape} words={held.withdrawn ? words : `${words}, then replaced`} />
              <span className="quiet">{showClock(held.at)}</span>
            </li>
          )
        })}
      </ol>
    </section>
  )
}
