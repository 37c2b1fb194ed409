/**
 * One job on the desk: what needs eyes on the left, the one in hand on the right, everything by keys alone. On a narrow
 * page one of the two is shown at a time.
 */
import type { Outcome } from "../../../facts/Outcome"
import { Opening } from "../../Opening"
import type { Desk } from "../Desk"
import { DeskView } from "./DeskView"
import type { SoundOf } from "./PlaySound"
import { useReviewedJob } from "./useReviewedJob"
import "./review.css"

export interface JobReviewProps extends Desk {
  job: string
  /** The role that lines added here carry in the log. */
  by: string
  back: () => void
  /** The sound of one utterance, where sound was kept. */
  soundOf?: SoundOf
  /** Takes a stretch of an utterance's sound away for good; seconds as in its words. */
  silence?: (heard: string, start: number, end: number) => Promise<Outcome>
}

const troubles = {
  failed: "The job could not be read from this device’s storage. Load the page again.",
  none: "No such job is stored on this device.",
}

export const JobReview = (props: JobReviewProps) => {
  const desk = useReviewedJob(props, props.job)
  const { found } = desk
  if (found === "reading") return <Opening />
  if (found === "failed" || found === "none")
    return (
      <main className="opening">
        <p role="alert">{troubles[found]}</p>
        <button type="button" onClick={props.back}>
          All jobs
        </button>
      </main>
    )
  return <DeskView {...props} desk={desk} found={found} />
}
