/** What the desk view of one job is given. */
import type { Outcome } from "../../../facts/Outcome"
import type { Desk } from "../Desk"
import type { SoundOf } from "./PlaySound"

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
