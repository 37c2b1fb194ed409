/**
 * Live work is for nobody who is alone. The finding stands until the supply is proved dead after it was said, or the
 * worker keeps it with a reason of his own; no rule here says that such work is permitted.
 */
import { z } from "zod"
import { knownAs } from "../knownAs"
import { defineRule, fails, notApplicable, passes } from "../Rule"

export const nobodyWorksLiveAlone = defineRule({
  name: "nobodyWorksLiveAlone",
  title: "Nobody works alone near live parts: the supply is made dead first.",
  source: {
    standard: "Electricity at Work Regulations",
    edition: "1989",
    clause: "regulation 14, and guidance on who is there",
  },
  status: "derived",
  of: ["job"],
  needs: z.object({ workingLive: knownAs.flag.optional(), deadAfterLive: knownAs.flag.optional() }),
  limits: {},
  judge({ workingLive, deadAfterLive }) {
    if (!workingLive) return notApplicable("Nobody said that he works near live parts.")
    if (deadAfterLive)
      return passes({
        spoken: "The supply was made dead first.",
        shown: "Live work alone was spoken of, and after that the supply was isolated and proved dead.",
      })
    return fails("stop", {
      spoken: "Stop. Live parts, and nobody with you. Isolate and prove it dead, or wait for somebody.",
      shown:
        "Live work alone is on record. Work dead wherever that can be done; where it cannot, it takes a reason, the right " +
        "precautions and as a rule a second person who can cut off and help. Proving dead on record closes this.",
      which: "alone near live parts",
    })
  },
  examples: [
    { given: { workingLive: true, deadAfterLive: false }, verdict: "fails", severity: "stop" },
    { given: { workingLive: true }, verdict: "fails", severity: "stop" },
    { given: { workingLive: true, deadAfterLive: true }, verdict: "passes" },
    { given: {}, verdict: "notApplicable" },
  ],
})
