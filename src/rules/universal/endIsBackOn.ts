/**
 * What was taken off for a test goes back on and is looked at. A connection that was recorded before the end came off
 * proves nothing, so the order in the log counts; where it is not known, the worker is reminded.
 */
import { z } from "zod"
import { knownAs } from "../knownAs"
import { asks, defineRule, fails, notApplicable, passes } from "../Rule"
import { sayItem } from "../sayings"

export const endIsBackOn = defineRule({
  name: "endIsBackOn",
  title: "An end that was taken off for a test is back on.",
  source: { standard: "guidance", edition: "GN3 as quoted", clause: "test method 2" },
  status: "direct",
  of: ["main_bond", "supplementary_bond", "earthing_conductor"],
  needs: z.object({
    item: knownAs.item,
    oneEndOff: knownAs.flag,
    ohms: knownAs.ohms.optional(),
    connectedToMet: knownAs.flag,
    connectedAfterOff: knownAs.flag.optional(),
  }),
  limits: {},
  judge({ item, oneEndOff, ohms, connectedToMet, connectedAfterOff }) {
    if (!oneEndOff) return notApplicable("Nothing was taken off.")
    if (ohms === undefined) return asks("ohms")
    const says = {
      spoken: `${sayItem(item)}: see that the end is put back.`,
      shown: "One end was taken off for the test, and nothing on record after that says that it is connected again.",
      which: "not back on",
    }
    if (!connectedToMet) return fails("note", { ...says, wants: ["connectedToMet"] })
    if (connectedAfterOff === false) return fails("warn", says)
    return connectedAfterOff === undefined
      ? fails("note", { ...says, shown: "It was taken off and connected; the record cannot tell which came first." })
      : passes({
          spoken: `${sayItem(item)}: the end was put back.`,
          shown: "The end was connected again after the test.",
        })
  },
  examples: [
    {
      given: { item: "gas", oneEndOff: true, ohms: 0.03, connectedToMet: true, connectedAfterOff: true },
      verdict: "passes",
    },
    {
      given: { item: "gas", oneEndOff: true, ohms: 0.03, connectedToMet: true, connectedAfterOff: false },
      verdict: "fails",
      severity: "warn",
    },
    { given: { item: "gas", oneEndOff: true, ohms: 0.03, connectedToMet: true }, verdict: "fails", severity: "note" },
    { given: { item: "gas", oneEndOff: true, ohms: 0.03, connectedToMet: false }, verdict: "fails", severity: "note" },
    { given: { item: "gas", oneEndOff: true, connectedToMet: false }, verdict: "asks" },
    { given: { item: "gas", oneEndOff: false, connectedToMet: true }, verdict: "notApplicable" },
  ],
})
