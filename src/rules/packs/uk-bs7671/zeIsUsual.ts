/** External loop impedance against what is usual. The figures are history and no limit: more is a question to ask. */
import { z } from "zod"
import { figure } from "../../figures"
import { knownAs } from "../../knownAs"
import { defineRule, fails, notApplicable, passes } from "../../Rule"
import { sayOhms } from "../../sayings"
import { typicalZe } from "../../tables/typicalZe"

export const zeIsUsual = defineRule({
  name: "zeIsUsual",
  title: "The external loop impedance is about what this kind of supply usually has.",
  source: typicalZe.source,
  status: "direct",
  of: ["job"],
  needs: z.object({ arrangement: knownAs.arrangement.optional(), zeOhms: z.number().nonnegative().optional() }),
  limits: {},
  judge({ arrangement, zeOhms }) {
    if (zeOhms === undefined || arrangement === undefined) return notApplicable("No loop impedance on record.")
    const { usualOhms } = typicalZe.rows.find((row) => row.arrangement === arrangement)!
    const inputs = { zeOhms, usualOhms, arrangement }
    const shown = `Ze ${figure(zeOhms)} Ω; up to ${usualOhms} Ω is usual for ${arrangement}, and was never promised.`
    return zeOhms <= usualOhms
      ? passes({ spoken: "The supply reads as expected.", shown, inputs })
      : fails("note", {
          spoken: `The supply reads high. It should read no more than ${sayOhms(usualOhms)}. Ask the network operator.`,
          shown,
          inputs,
        })
  },
  examples: [
    { given: { arrangement: "TN-C-S", zeOhms: 0.35 }, verdict: "passes" },
    { given: { arrangement: "TN-C-S", zeOhms: 0.36 }, verdict: "fails", severity: "note" },
    { given: { arrangement: "TN-S", zeOhms: 0.8 }, verdict: "passes" },
    { given: { arrangement: "TN-S", zeOhms: 0.81 }, verdict: "fails", severity: "note" },
    { given: { arrangement: "TT", zeOhms: 21 }, verdict: "passes" },
    { given: { arrangement: "TT", zeOhms: 21.5 }, verdict: "fails", severity: "note" },
    { given: { arrangement: "TT" }, verdict: "notApplicable" },
    { given: { zeOhms: 0.2 }, verdict: "notApplicable" },
  ],
})
