/** What the desk view of one job is given. */
import type { Desk } from "../Desk"

export interface JobReviewProps extends Desk {
  job: string
  /** The role that lines added here carry in the log. */
  by: string
  back: () => void
}
