/** Which of the screens of an open job the address names. */
import { type Screen, screens } from "../../facts/Interpretation"

/** Anything unknown is the screen of the moment: a job in hand is never hidden by a wrong address. */
export const jobScreenOf = (hash: string): Screen => screens.find((screen) => hash === `#${screen}`) ?? "now"
