/** One job on the desk. */
import { allHeld } from "../../../record/holding"
import { project } from "../../../record/project"
import { showFact } from "../../parts/showFact"
import { showItem } from "../../parts/showItem"
import { useOpened } from "../../parts/useOpened"
import type { Desk } from "../Desk"

export interface JobReviewProps extends Desk {
  job: string
  /** The role that lines added here are signed with in the log. */
  by: string
  back: () => void
}

export const JobReview = ({ job, store, back }: JobReviewProps) => {
  const log = useOpened(() => store.read(job))
  if (log === null || log === "failed") return <p role="status">Reading the job.</p>
  const record = project(log.lines)
  return (
    <main>
      <h1>{record.place}</h1>
      <button type="button" onClick={back}>
        All jobs
      </button>
      <ul>
        {allHeld(record).map((held) => (
          <li key={held.entry}>
            {held.item && showItem(held.item)} {showFact(held.fact).label} {showFact(held.fact).value}
          </li>
        ))}
      </ul>
    </main>
  )
}
