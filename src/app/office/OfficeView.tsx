/** The office: the list of jobs, or the one that the address names. */
import { useSyncExternalStore } from "react"
import { Opening } from "../Opening"
import { useOpened } from "../parts/useOpened"
import type { DroppedSound } from "../sound/DroppedSound"
import type { Desk } from "./Desk"
import { officeHash } from "./officePlace"
import "./office.css"

interface OfficeProps {
  desk: Desk
  job: string | null
}

const Review = ({ desk, job }: { desk: Desk; job: string }) => {
  const review = useOpened(() => import("./desk/JobReview"))
  if (review === null || review === "failed") return <Opening failed={review === "failed"} />
  const back = () => {
    window.location.hash = officeHash()
  }
  return <review.JobReview {...desk} job={job} by="office" back={back} />
}

const Find = ({ desk }: { desk: Desk }) => {
  const find = useOpened(() => import("./find/FindView"))
  if (find === null || find === "failed") return <Opening failed={find === "failed"} />
  return <find.FindView desk={desk} />
}

/** Sound that had to go is said wherever one is in the office. */
const Dropped = ({ dropped }: { dropped: DroppedSound }) => {
  const words = useSyncExternalStore(dropped.subscribe, dropped.words)
  return words && <p role="alert">{words}</p>
}

export const OfficeView = ({ desk, job }: OfficeProps) => (
  <div className="app office">
    <Dropped dropped={desk.sound.dropped} />
    {job === null ? <Find desk={desk} /> : <Review key={job} desk={desk} job={job} />}
  </div>
)
