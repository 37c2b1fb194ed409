/** Names of steps for the screen, worded as done. */
import type { Step } from "../../facts/Fact"

const names: Record<Step, string> = {
  pipe_cleaned: "Pipe cleaned",
  clamp_fitted: "Clamp fitted",
  label_fitted: "Label fitted",
  leads_nulled: "Leads nulled",
  one_end_disconnected: "One end off",
  connected_to_met: "On the terminal",
  isolated_proved_dead: "Isolated, proved dead",
}

export const showStep = (step: Step): string => names[step]
