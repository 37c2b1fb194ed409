/** With both ends on, a meter reads every other path as well, and a broken bond can read well. */
import { z } from "zod"
import { knownAs } from "../knownAs"
import { defineRule, fails, notApplicable, passes } from "../Rule"
import { sayItem } from "../sayings"

export const oneEndWasOff = defineRule({
  name: "oneEndWasOff",
  title: "One end of a bond is off while it is read.",
  source: { standard: "guidance", edition: "GN3 as quoted", clause: "test method 2" },
  status: "direct",
  of: ["main_bond", "supplementary_bond"],
  needs: z.object({ item: knownAs.item, readWithOneEndOff: knownAs.flag, ohms: knownAs.ohms.optional() }),
  limits: {},
  judge({ item, ohms, readWithOneEndOff }) {
    if (ohms === undefined) return notApplicable("There is no reading yet.")
    if (ohms === null) return notApplicable("Over range is over range by any path.")
    return readWithOneEndOff
      ? passes({
          spoken: `${sayItem(item)}: one end was off for the test.`,
          shown: "One end was said to be off before this reading, so no other path was in it.",
        })
      : fails("note", {
          spoken: `${sayItem(item)}: was one end off for this test? If not, other metal may be in it.`,
          shown:
            "One end was not said to be off before this reading, so it may have gone by another path. Before an end is " +
            "taken off, the supply is isolated and proved dead; after the test it goes back on and is looked at.",
        })
  },
  examples: [
    { given: { item: "gas", ohms: 0.05, readWithOneEndOff: true }, verdict: "passes" },
    { given: { item: "gas", ohms: 0.05, readWithOneEndOff: false }, verdict: "fails", severity: "note" },
    { given: { item: "gas", ohms: null, readWithOneEndOff: false }, verdict: "notApplicable" },
    { given: { item: "gas", readWithOneEndOff: true }, verdict: "notApplicable" },
    { given: { item: "gas" }, verdict: "asks" },
  ],
})
