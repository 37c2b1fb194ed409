/**
 * The flat grammar that an engine decodes with, chosen by what was asked. All commands and full entries stay open under
 * every question; the question only makes its bare answers possible and likely.
 */
import type { EarGrammar } from "../facts/EarGrammar"
import type { Context } from "../facts/Interpretation"
import { flattenGrammar } from "../grammar/flattenGrammar"
import { measureGrammar } from "../grammar/measureGrammar"
import type { GrammarFolder } from "./GrammarFolder"

/** Public rules of `ear.jsgf` by the kind of question; anything else gets `open`. */
const roots: Record<string, string> = {
  confirm: "confirm",
  conductor_csa: "conductor_csa",
  neutral_csa: "neutral_csa",
  length: "length_m",
  distance: "distance_mm",
  resistance: "resistance",
  earthing_arrangement: "earthing_arrangement",
  keep_reason: "keep_reason",
  service: "service",
  read_on: "read_on",
  sign_off: "yes_no",
  start_over: "yes_no",
  check_in: "check_in",
}

/** Rules that stand in for these while a value is asked for digit by digit. */
const spelled: Record<string, string> = {
  confirm: "confirm_digits",
  length: "length_digits",
  distance: "distance_digits",
  resistance: "resistance_digits",
}

/** The full name of the rule that the ear decodes with under this context. */
export function earRoot(context: Context | undefined): string {
  const asked = context?.asked ?? ""
  if (asked.startsWith("step:")) return "ear.step_done"
  if (asked.startsWith("service_present:")) return "ear.service"
  return `ear.${(context?.digits && spelled[asked]) || (roots[asked] ?? "open")}`
}

/** Flat grammar and pronunciations for this context; the same context gives the same id. */
export function buildEarGrammar(folder: GrammarFolder, context?: Context): EarGrammar {
  const root = earRoot(context)
  const name = root.replace(".", "_")
  const { words } = measureGrammar(folder.set, root)
  return {
    id: name,
    jsgf: flattenGrammar(folder.set, root, name),
    pronunciations: words.flatMap((word) =>
      (folder.pronunciations.get(word) ?? []).map((phones) => [word, phones] as const),
    ),
    ...(context?.misheard && { unlikely: context.misheard }),
  }
}
