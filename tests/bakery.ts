/** What the sample job says, written down by hand from its script: the record that every way of hearing it must give. */

/** One line a value that stands at the end, as `showFact` writes it, with how it was accepted. */
export const bakeryRecord: readonly string[] = [
  "supply earthing_arrangement TN-C-S, not_challenged",
  "supply neutral_csa 25 mm², not_challenged",
  "supply step_done isolated_proved_dead, not_challenged",
  "earthing_conductor conductor_csa 16 mm², not_challenged",
  "earthing_conductor length 3 m, not_challenged",
  "gas service gas, not_challenged",
  "gas conductor_csa 10 mm², not_challenged",
  "gas length 8 m, not_challenged",
  "gas step_done pipe_cleaned, not_challenged",
  "gas step_done clamp_fitted, not_challenged",
  "gas distance 400 mm, not_challenged",
  "gas step_done label_fitted, not_challenged",
  "gas step_done one_end_disconnected, not_challenged",
  "gas resistance 0.02 Ω, said_yes",
  "gas step_done connected_to_met, not_challenged",
  "water service water, not_challenged",
  "water conductor_csa 10 mm², not_challenged",
  "water length 26 m, not_challenged",
  "water step_done pipe_cleaned, not_challenged",
  "water step_done clamp_fitted, not_challenged",
  "water distance 300 mm, not_challenged",
  "water step_done label_fitted, not_challenged",
  "water step_done one_end_disconnected, not_challenged",
  "water resistance 0.05 Ω, said_yes",
  "water step_done connected_to_met, not_challenged",
  "test_leads resistance > 99900 Ω, said_yes",
  "test_leads step_done leads_nulled, not_challenged",
]

/** The warnings that are spoken on the way, in order, as they begin. */
export const bakeryWarnings: readonly string[] = [
  "Warning. Water: four square is too small.",
  "Warning. Water: nought point nought one ohms is too low.",
]

/** Said in the shop by others; none of these words may stand in the log. */
export const bakeryChatter = /oven|rolls|smells|van|friday/i
