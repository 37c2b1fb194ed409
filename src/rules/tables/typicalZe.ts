/**
 * What a supply's earth path usually measures at most, by an engineering recommendation of 1991 that has been replaced
 * since. Distributors never guaranteed it: more than this is a question to ask, not a failure.
 */
import { defineTable } from "../Table"

export const typicalZe = defineTable({
  title: "Usual external loop impedance of a 230 V single-phase supply up to 100 A",
  source: { standard: "ENA ER P23/1", edition: "1991, replaced by P23/2:2018", clause: "none" },
  unit: "Ω",
  status: "direct",
  note: "For TT it is the network's part alone, without the electrode of the installation.",
  rows: [
    { arrangement: "TN-C-S", usualOhms: 0.35 },
    { arrangement: "TN-S", usualOhms: 0.8 },
    { arrangement: "TT", usualOhms: 21 },
  ],
})
