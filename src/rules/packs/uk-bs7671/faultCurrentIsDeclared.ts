/** Prospective fault current against what distributors declare. More than that is a reason to look at the gear. */
import { z } from "zod"
import { figure } from "../../figures"
import { defineRule, fails, notApplicable, passes } from "../../Rule"
import { declaredFault } from "../../tables/declaredFault"

export const faultCurrentIsDeclared = defineRule({
  name: "faultCurrentIsDeclared",
  title: "The prospective fault current is no more than distributors declare.",
  source: declaredFault.source,
  status: "direct",
  of: ["job"],
  needs: z.object({
    faultKa: z.number().positive().optional(),
    phases: z.custom<1 | 3>().optional(),
  }),
  limits: {},
  judge({ faultKa, phases = 1 }) {
    if (faultKa === undefined) return notApplicable("No fault current on record.")
    const { mostKa } = declaredFault.rows.find((row) => row.phases === phases)!
    const inputs = { faultKa, mostKa, phases }
    const shown = `${figure(faultKa)} kA; ${mostKa} kA is the declared most for ${phases === 1 ? "one phase" : "three phases"}.`
    return faultKa <= mostKa
      ? passes({ spoken: "The fault current is under the limit.", shown, inputs })
      : fails("note", {
          spoken: "The fault current is too high. Check the rating of the fuse and the unit.",
          shown: `${shown} See that every device can break this current.`,
          inputs,
        })
  },
  examples: [
    { given: { faultKa: 16 }, verdict: "passes" },
    { given: { faultKa: 16.1 }, verdict: "fails", severity: "note" },
    { given: { faultKa: 25, phases: 3 }, verdict: "passes" },
    { given: { faultKa: 25.1, phases: 3 }, verdict: "fails", severity: "note" },
    { given: {}, verdict: "notApplicable" },
  ],
})
