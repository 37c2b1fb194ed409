/**
 * One job on the desk: what needs eyes on the left, the one in hand on the right, everything by keys alone. On a narrow
 * page one of the two is shown at a time.
 */
import { Opening } from "../../Opening"
import { DeskView } from "./DeskView"
import type { JobReviewProps } from "./ReviewProps"
import { useReviewedJob } from "./useReviewedJob"
import "./review.css"

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
