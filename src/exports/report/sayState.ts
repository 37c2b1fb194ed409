/** States of entries and items as a shape and its words. */
import { allHeld } from "../../record/holding"
import { isWarning } from "../../record/warningKey"
import type { ExportedJob } from "../ExportedJob"
import type { ValueTrail } from "../valueTrail"
import type { Shape } from "./Report"

const ofEntry: Record<ValueTrail["state"], Shape> = {
  "said yes": "yes",
  "yes by tap": "yes",
  "not challenged": "unchallenged",
  "waiting for a yes": "waiting",
  "not answered": "unchallenged",
  replaced: "gone",
  "taken back": "gone",
  undone: "gone",
}

/** The shape of an entry's state. */
export const entryMark = (state: ValueTrail["state"]): Shape => ofEntry[state]

/** The worst that stands on the record about an item. */
export const itemState = (item: string, job: ExportedJob): { mark: Shape; words: string } => {
  const open = job.open.filter((finding) => finding.item === item)
  if (open.some((finding) => finding.severity === "stop")) return { mark: "stop", words: "stop open" }
  if (open.length > 0) return { mark: "warn", words: "warning open" }
  const held = allHeld(job.record).filter((one) => one.item === item)
  if (held.some((one) => one.needsYes && one.accepted === null)) return { mark: "waiting", words: "waits for a yes" }
  const kept = job.findings.some((finding) => finding.item === item && isWarning(finding))
  if (kept) return { mark: "kept", words: "kept on purpose" }
  const told = held.some((one) => one.fact.kind !== "service")
  return told ? { mark: "yes", words: "on record" } : { mark: "bare", words: "nothing said yet" }
}
