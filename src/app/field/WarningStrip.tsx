/** The worst open warning in a line, on the screens that do not show it in full: it is never out of sight. */
import type { DialogueState } from "../../dialogue/DialogueState"
import { Mark } from "../parts/Mark"
import { worstFirst } from "./Warnings"

export const WarningStrip = ({ dialogue }: { dialogue: DialogueState }) => {
  const [worst, ...more] = worstFirst(dialogue)
  if (!worst) return null
  return (
    <a className="warning-strip" href="#now">
      <Mark shape={worst.severity === "stop" ? "stop" : "warn"} />
      <span>
        {worst.spoken}
        {more.length > 0 && <span className="quiet"> And {more.length} more.</span>}
      </span>
    </a>
  )
}
