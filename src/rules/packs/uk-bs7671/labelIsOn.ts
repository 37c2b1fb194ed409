/**
 * A notice stays at every bond and at the electrode. Its words are the standard's own and are left to the label that
 * comes with the clamp; whether the main terminal needs one is disputed where it sits inside the switchgear (514.13.1).
 */
import { z } from "zod"
import { knownAs } from "../../knownAs"
import { asks, defineRule, passes } from "../../Rule"
import { sayItem } from "../../sayings"

export const labelIsOn = defineRule({
  name: "labelIsOn",
  title: "The standard notice is fixed at every bond and at the electrode.",
  source: { standard: "BS 7671", edition: "2018+A2:2022", clause: "514.13.1" },
  status: "direct",
  of: ["main_bond", "electrode"],
  needs: z.object({ item: knownAs.item, labelFitted: knownAs.flag }),
  limits: {},
  judge: ({ item, labelFitted }) =>
    labelFitted
      ? passes({
          spoken: `${sayItem(item)}: the label is on.`,
          shown: "The notice is fixed. The label supplied with a clamp to BS 951 will do.",
        })
      : asks("labelFitted"),
  examples: [
    { given: { item: "gas", labelFitted: true }, verdict: "passes" },
    { given: { item: "gas", labelFitted: false }, verdict: "asks" },
  ],
})
