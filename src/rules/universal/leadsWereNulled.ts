/** A reading counts for less when nobody said that the leads were nulled before it: half an ohm of lead hides a bond. */
import { z } from "zod"
import { knownAs } from "../knownAs"
import { defineRule, fails, notApplicable, passes } from "../Rule"
import { sayItem } from "../sayings"

export const leadsWereNulled = defineRule({
  name: "leadsWereNulled",
  title: "The leads are nulled, or their resistance taken off, before a bond is read.",
  source: { standard: "guidance", edition: "GN3 as quoted", clause: "continuity of protective conductors" },
  status: "direct",
  of: ["main_bond", "supplementary_bond"],
  needs: z.object({ item: knownAs.item, readWithLeadsNulled: knownAs.flag, ohms: knownAs.ohms.optional() }),
  limits: {},
  judge({ item, ohms, readWithLeadsNulled }) {
    if (ohms === undefined) return notApplicable("There is no reading yet.")
    if (ohms === null) return notApplicable("Over range is over range with any leads.")
    return readWithLeadsNulled
      ? passes({
          spoken: `${sayItem(item)}: the leads were nulled before the test.`,
          shown: "The leads were said to be nulled before this reading.",
        })
      : fails("note", {
          spoken: `${sayItem(item)}: were the leads nulled before this test? If not, null them and test again.`,
          shown: "The leads were not said to be nulled before this reading, so it may hold their resistance as well.",
        })
  },
  examples: [
    { given: { item: "gas", ohms: 0.05, readWithLeadsNulled: true }, verdict: "passes" },
    { given: { item: "gas", ohms: 0.05, readWithLeadsNulled: false }, verdict: "fails", severity: "note" },
    { given: { item: "gas", ohms: null, readWithLeadsNulled: false }, verdict: "notApplicable" },
    { given: { item: "gas", readWithLeadsNulled: true }, verdict: "notApplicable" },
    { given: { item: "gas" }, verdict: "asks" },
  ],
})
