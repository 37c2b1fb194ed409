/**
 * A supplementary bond lets the device cut off before more than 50 V stand across it. The current is the one that
 * operates the device, not its rating; here it is the residual current of the device that is on record (415.2.2).
 */
import { z } from "zod"
import { figure } from "../../figures"
import { knownAs } from "../../knownAs"
import { mostElectrodeOhms } from "../../mostTouchOhms"
import { defineRule, fails, notApplicable, passes } from "../../Rule"
import { sayItem, sayOhms } from "../../sayings"

export const supplementaryOhms = defineRule({
  name: "supplementaryOhms",
  title: "A supplementary bond keeps what can be touched under 50 V until the device cuts off.",
  source: { standard: "BS 7671", edition: "2018+A2:2022", clause: "415.2.2" },
  status: "direct",
  of: ["supplementary_bond"],
  needs: z.object({ item: knownAs.item, ohms: knownAs.ohms.optional(), residualMa: knownAs.positive.optional() }),
  limits: {},
  judge({ item, ohms, residualMa }) {
    if (ohms === undefined || ohms === null || residualMa === undefined)
      return notApplicable("There is no reading, or no residual current device on record.")
    const most = Math.floor(mostElectrodeOhms(residualMa) * 10) / 10
    const sum = `50 V / ${residualMa} mA = ${most} Ω`
    const says = {
      shown: `${figure(ohms)} Ω between the parts; no more than ${sum} is wanted.`,
      inputs: { ohms, residualMa, mostOhms: most },
      working: { formula: "most ohms = 50 V / operating current", numbers: sum, result: `${most} Ω` },
    }
    return ohms <= most
      ? passes({ ...says, spoken: `${sayItem(item)}: ${sayOhms(ohms)} is low enough.` })
      : fails("stop", {
          ...says,
          spoken: `${sayItem(item)}: ${sayOhms(ohms)} is too much. Look at the joints, then test again.`,
        })
  },
  examples: [
    { given: { item: "bathroom_supplementary", ohms: 1666, residualMa: 30 }, verdict: "passes" },
    { given: { item: "bathroom_supplementary", ohms: 1667, residualMa: 30 }, verdict: "fails", severity: "stop" },
    { given: { item: "bathroom_supplementary", ohms: 100, residualMa: 500 }, verdict: "passes" },
    { given: { item: "bathroom_supplementary", ohms: 100.1, residualMa: 500 }, verdict: "fails", severity: "stop" },
    { given: { item: "bathroom_supplementary", ohms: 0.05 }, verdict: "notApplicable" },
    { given: { item: "bathroom_supplementary", ohms: null, residualMa: 30 }, verdict: "notApplicable" },
    { given: { item: "bathroom_supplementary" }, verdict: "notApplicable" },
  ],
})
