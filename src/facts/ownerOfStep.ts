/** Steps that belong to one place on every job, and not to the part that is being talked about. */
import type { Step } from "./Fact"
import type { Item } from "./Item"

export const ownerOfStep: Readonly<Partial<Record<Step, Item>>> = {
  risk_checked: "job",
  survey_done: "job",
  handed_over: "job",
  tester_proved_before: "supply",
  isolated_proved_dead: "supply",
  tester_proved_after: "supply",
  working_live: "supply",
  terminal_fitted: "met",
  terminal_labelled: "met",
  connections_checked: "met",
  leads_nulled: "test_leads",
}
