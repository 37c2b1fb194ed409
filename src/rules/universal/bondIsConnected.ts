/** A bond that ends nowhere protects nobody: its other end is on the main earthing terminal. */
import { z } from "zod"
import { knownAs } from "../knownAs"
import { asks, defineRule, passes } from "../Rule"
import { sayItem } from "../sayings"

export const bondIsConnected = defineRule({
  name: "bondIsConnected",
  title: "The bond is connected to the main earthing terminal.",
  source: { standard: "BS 7671", edition: "2008 text", clause: "542.4.1" },
  status: "direct",
  of: ["main_bond"],
  needs: z.object({ item: knownAs.item, connectedToMet: knownAs.flag }),
  limits: {},
  judge: ({ item, connectedToMet }) =>
    connectedToMet
      ? passes({
          spoken: `${sayItem(item)}: it ends at the main earth terminal.`,
          shown: "Connected to the main earthing terminal.",
        })
      : asks("connectedToMet"),
  examples: [
    { given: { item: "gas", connectedToMet: true }, verdict: "passes" },
    { given: { item: "gas", connectedToMet: false }, verdict: "asks" },
  ],
})
