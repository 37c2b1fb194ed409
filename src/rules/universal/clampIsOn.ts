/** The clamp sits on clean metal: paint and rust under it read well today and badly in a year. */
import { z } from "zod"
import { knownAs } from "../knownAs"
import type { ValueName } from "../namedValues"
import { isPipe } from "../partKind"
import { asks, defineRule, passes } from "../Rule"
import { sayItem } from "../sayings"

export const clampIsOn = defineRule({
  name: "clampIsOn",
  title: "The pipe is cleaned and the clamp is fitted.",
  source: { standard: "common practice, no source", edition: "none", clause: "none" },
  status: "derived",
  of: ["main_bond"],
  needs: z.object({ item: knownAs.item, pipeCleaned: knownAs.flag, clampFitted: knownAs.flag }),
  limits: {},
  judge({ item, pipeCleaned, clampFitted }) {
    const left: ValueName[] = []
    if (isPipe(item) && !pipeCleaned) left.push("pipeCleaned")
    if (!clampFitted) left.push("clampFitted")
    if (left.length > 0) return asks(...left)
    return passes({
      spoken: `${sayItem(item)}: the clamp is on${isPipe(item) ? " clean pipe" : ""}.`,
      shown: `The clamp was fitted${isPipe(item) ? " after the pipe was cleaned" : ""}.`,
    })
  },
  examples: [
    { given: { item: "gas", pipeCleaned: true, clampFitted: true }, verdict: "passes" },
    { given: { item: "gas", pipeCleaned: true, clampFitted: false }, verdict: "asks" },
    { given: { item: "gas", pipeCleaned: false, clampFitted: true }, verdict: "asks" },
    { given: { item: "structural_steel", pipeCleaned: false, clampFitted: true }, verdict: "passes" },
    { given: { item: "structural_steel", pipeCleaned: false, clampFitted: false }, verdict: "asks" },
  ],
})
