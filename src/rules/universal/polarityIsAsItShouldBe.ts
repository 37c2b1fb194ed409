/** A supply with line and neutral crossed makes every switch and fuse cut the wrong wire: nothing goes on after that. */
import { z } from "zod"
import { defineRule, fails, passes } from "../Rule"

export const polarityIsAsItShouldBe = defineRule({
  name: "polarityIsAsItShouldBe",
  title: "Line and neutral of the supply are not crossed.",
  source: { standard: "common practice, no source", edition: "none", clause: "none" },
  status: "derived",
  of: ["job"],
  needs: z.object({ polarity: z.enum(["correct", "reversed"]) }),
  limits: {},
  judge: ({ polarity }) =>
    polarity === "reversed"
      ? fails("stop", {
          spoken: "Stop. The supply has line and neutral the wrong way. Isolate, and tell the network operator.",
          shown:
            "The polarity of the supply is reversed: switches and fuses would cut the neutral and leave the line live. " +
            "Isolate, leave it off and tell the network operator.",
        })
      : passes({
          spoken: "Line and neutral are as expected.",
          shown: "The polarity of the supply was checked.",
        }),
  examples: [
    { given: { polarity: "reversed" }, verdict: "fails", severity: "stop" },
    { given: { polarity: "correct" }, verdict: "passes" },
    { given: {}, verdict: "asks" },
  ],
})
