/** Everything that ever stood in one place of the record, newest first: nothing is overwritten, so all of it is here. */
import { heldIn } from "../../../record/holding"
import type { Held, JobRecord } from "../../../record/JobRecord"
import { State } from "../../parts/Mark"
import { showFact } from "../../parts/showFact"
import { showMoment } from "../../parts/showMoment"
import { deskState } from "./pointWords"

interface HistoryProps {
  held: Held
  record: JobRecord
  /** Who added an entry, by its id. */
  by: (entry: string) => string
}

const whyOf = ({ origin }: Held): string => (origin.reason ? `“${origin.reason}”` : "")

export const History = ({ held, record, by }: HistoryProps) => {
  const all = record.entries.filter((one) => one.slot === held.slot).toReversed()
  const standing = heldIn(record, held.slot)?.entry
  return (
    <section className="value-trail" aria-labelledby="trail-head">
      <h3 id="trail-head">History</h3>
      <ol reversed>
        {all.map((one) => {
          const { shape, words } = deskState(one)
          const isStanding = one.entry === standing
          return (
            <li key={one.entry} className={isStanding ? "trail-now" : ""}>
              <span className="value">{showFact(one.fact).value}</span>
              <State shape={shape} words={isStanding || one.withdrawn ? words : `${words}, then replaced`} />
              <span className="quiet">
                {showMoment(one.at)}, {by(one.entry)} {whyOf(one)}
              </span>
            </li>
          )
        })}
      </ol>
    </section>
  )
}
