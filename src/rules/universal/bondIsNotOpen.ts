/**
 * A bond that reads over range is open somewhere, or its other end is not this conductor's. How the reading is worded
 * matters: the sentence must not sound like a reading itself.
 */
import { z } from "zod"
import { knownAs } from "../knownAs"
import { wantsReading } from "../partKind"
import { asks, defineRule, fails, notApplicable } from "../Rule"
import { sayItem } from "../sayings"

export const bondIsNotOpen = defineRule({
  name: "bondIsNotOpen",
  title: "A bond does not read over range.",
  source: { standard: "common practice, no source", edition: "none", clause: "none" },
  status: "derived",
  of: ["main_bond", "earthing_conductor", "supplementary_bond"],
  needs: z.object({
    item: knownAs.item,
    ohms: knownAs.ohms.optional(),
    ohmsQualifier: knownAs.qualifier.optional(),
  }),
  limits: {},
  judge({ item, ohms, ohmsQualifier }) {
    if (ohms === undefined)
      return wantsReading(item) ? asks("ohms") : notApplicable("It was not read, and need not be.")
    if (ohms !== null && ohmsQualifier !== ">") return notApplicable("The reading is a figure.")
    const limit = ohms === null ? "" : ` (above ${ohms} Ω)`
    return fails("warn", {
      spoken:
        `${sayItem(item)}: the meter finds no way from end to end. ` +
        "See that both leads are on the same conductor and find the break, then test again.",
      shown:
        `Over range${limit}: the conductor is broken or not connected, or the far end belongs to another one. ` +
        "Open leads read over range too.",
      which: "open",
      inputs: { ohms, ohmsQualifier: ohmsQualifier ?? null },
    })
  },
  examples: [
    { given: { item: "gas", ohms: null, ohmsQualifier: ">" }, verdict: "fails", severity: "warn", which: "open" },
    { given: { item: "gas", ohms: 99.9, ohmsQualifier: ">" }, verdict: "fails", severity: "warn", which: "open" },
    { given: { item: "gas", ohms: 0.05 }, verdict: "notApplicable" },
    { given: { item: "gas", ohms: 0.05, ohmsQualifier: "<" }, verdict: "notApplicable" },
    { given: { item: "gas" }, verdict: "asks" },
    { given: { item: "earthing_conductor" }, verdict: "notApplicable" },
    { given: { item: "earthing_conductor", ohms: null, ohmsQualifier: ">" }, verdict: "fails", severity: "warn" },
  ],
})
