/** What a plan wants, in words to be put after the name of its item. */
import type { Step } from "../facts/Fact"
import type { Item } from "../facts/Item"
import { sayNumber } from "../facts/sayNumber"
import { sayItem } from "../interpret/sayItem"
import { sayKind } from "../interpret/sayKind"
import { capital } from "./capital"
import type { Wanted } from "./JobPlan"

/**
 * Steps still to come, as things and not as done: an app that hears itself must not take its own list for a report.
 */
const steps: Readonly<Record<Step, string>> = {
  risk_checked: "risk check",
  survey_done: "survey of the parts",
  tester_proved_before: "the tester before the test",
  isolated_proved_dead: "the test for dead",
  tester_proved_after: "the tester after the test",
  working_live: "live work",
  terminal_fitted: "fitting",
  terminal_labelled: "label",
  conductor_run: "the run",
  pipe_cleaned: "cleaning",
  clamp_fitted: "clamp",
  label_fitted: "label",
  leads_nulled: "null",
  one_end_disconnected: "taking an end off",
  connected_to_met: "connection at the terminal",
  connections_checked: "check of every connection",
  handed_over: "handing over",
}

/** Readings that have a name of their own. */
const readings: Readonly<Record<Item, string>> = { supply: "loop impedance", test_leads: "open leads check" }

export const sayWanted = (item: Item, wanted: Wanted): string => {
  if (wanted.startsWith("step:")) return steps[wanted.slice(5) as Step]
  return wanted === "resistance" ? (readings[item] ?? sayKind(wanted)) : sayKind(wanted)
}

/** "Water: length, pipe cleaned and five more." `most` is how many are named. */
export const sayAllWanted = (item: Item, wanted: readonly Wanted[], most: number): string => {
  const named = wanted.slice(0, wanted.length === most + 1 ? most + 1 : most).map((one) => sayWanted(item, one))
  const more = wanted.length - named.length
  return `${capital(sayItem(item))}: ${named.join(", ")}${more > 0 ? `, and ${sayNumber(more)} more` : ""}.`
}
