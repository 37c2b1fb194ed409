/** Names of steps for the screen, worded as done. */
import type { Step } from "../../facts/Fact"

const names: Record<Step, string> = {
  risk_checked: "Risks checked",
  survey_done: "Parts surveyed",
  tester_proved_before: "Tester proved before",
  tester_proved_after: "Tester proved after",
  working_live: "Working live, alone",
  terminal_fitted: "Terminal fitted",
  terminal_labelled: "Terminal labelled",
  conductor_run: "Conductor run in",
  connections_checked: "Connections checked",
  handed_over: "Handed over",
  pipe_cleaned: "Pipe cleaned",
  clamp_fitted: "Clamp fitted",
  label_fitted: "Label fitted",
  leads_nulled: "Leads nulled",
  one_end_disconnected: "One end off",
  connected_to_met: "On the terminal",
  isolated_proved_dead: "Isolated, proved dead",
}

export const showStep = (step: Step): string => names[step]
