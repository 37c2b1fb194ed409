/**
 * No earth is opened before the supply is isolated and proved dead: with a fault on, the loose end and the pipe are
 * live. It holds for every pack, and the finding stays until the proving is on record.
 */
import { z } from "zod"
import { knownAs } from "../knownAs"
import { defineRule, fails, notApplicable, passes } from "../Rule"
import { sayItem } from "../sayings"

export const provedDeadFirst = defineRule({
  name: "provedDeadFirst",
  title: "The supply is isolated and proved dead before an end of an earth or a bond comes off.",
  source: {
    standard: "Electricity at Work Regulations and HSE GS38",
    edition: "1989, as a textbook has it",
    clause: "none",
  },
  status: "direct",
  of: ["main_bond", "supplementary_bond", "earthing_conductor", "electrode"],
  needs: z.object({ item: knownAs.item, oneEndOff: knownAs.flag, provedDead: knownAs.flag }),
  limits: {},
  judge({ item, oneEndOff, provedDead }) {
    if (!oneEndOff) return notApplicable("Nothing was taken off.")
    if (provedDead)
      return passes({
        spoken: `${sayItem(item)}: the supply was dead before the end was off.`,
        shown: "Isolated and proved dead is on record, and one end was taken off.",
      })
    return fails("stop", {
      spoken: `Stop. ${sayItem(item)}: an end is off, and nobody said that the supply is dead. Isolate and prove it, then go on.`,
      shown:
        "One end was taken off, and nothing on record says that the supply was isolated and proved dead. With a fault on, " +
        "the loose end and the metal are live. Prove the tester, isolate and lock off, test every pair, prove the tester " +
        `again.${item === "earthing_conductor" ? " Without its earthing conductor the whole installation has no earth." : ""}`,
      which: "not proved dead",
    })
  },
  examples: [
    { given: { item: "water", oneEndOff: true, provedDead: false }, verdict: "fails", severity: "stop" },
    { given: { item: "earthing_conductor", oneEndOff: true, provedDead: false }, verdict: "fails", severity: "stop" },
    { given: { item: "water", oneEndOff: true, provedDead: true }, verdict: "passes" },
    { given: { item: "water", oneEndOff: false, provedDead: false }, verdict: "notApplicable" },
  ],
})
