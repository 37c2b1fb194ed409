/** A step as something done, in words that the interpreter reads back as that step. */
import type { Step } from "../facts/Fact"

const names: Readonly<Record<Step, string>> = {
  risk_checked: "risks checked",
  survey_done: "survey done",
  tester_proved_before: "tester proved before",
  tester_proved_after: "tester proved after",
  working_live: "working live alone",
  terminal_fitted: "main earth terminal fitted",
  terminal_labelled: "main earth terminal labelled",
  conductor_run: "conductor run in",
  connections_checked: "connections checked",
  handed_over: "job handed over",
  pipe_cleaned: "pipe cleaned",
  clamp_fitted: "clamp fitted",
  label_fitted: "label fitted",
  leads_nulled: "leads nulled",
  one_end_disconnected: "one end disconnected",
  connected_to_met: "connected to the main earth terminal",
  isolated_proved_dead: "isolated and proved dead",
}

export const sayStep = (step: Step): string => names[step]
