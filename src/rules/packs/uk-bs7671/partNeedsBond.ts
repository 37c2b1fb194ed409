/**
 * Whether a part brings in a potential from outside at all. An insulating section where it comes in settles it; the test
 * in ohms is guidance, and only a clear high reading says that no bond is needed: a low one may come by another path.
 */
import { z } from "zod"
import { figure } from "../../figures"
import { knownAs } from "../../knownAs"
import { isExtraneous, leastExtraneousOhms, usualExtraneousTest } from "../../leastExtraneousOhms"
import { defineRule, fails, notApplicable, passes } from "../../Rule"
import { sayItem } from "../../sayings"

const { milliamps } = usualExtraneousTest
const clearOhms = leastExtraneousOhms({ milliamps, bodyOhms: 0 })
const bodyOhms = leastExtraneousOhms({ milliamps })
const limits = `${figure(clearOhms / 1000)} kΩ without a body, ${figure(bodyOhms / 1000)} kΩ with one, at ${milliamps} mA`

export const partNeedsBond = defineRule({
  name: "partNeedsBond",
  title: "Only a part that can bring in a potential from outside is main bonded.",
  source: { standard: "BS 7671 and guidance", edition: "2018; GN8 as quoted", clause: "411.3.1.2" },
  status: "direct",
  of: ["main_bond"],
  needs: z.object({
    item: knownAs.item,
    insulatingSection: knownAs.flag.optional(),
    toMetOhms: z.number().nonnegative().optional(),
  }),
  limits: { clearOhms, bodyOhms },
  judge({ item, insulatingSection, toMetOhms }) {
    if (insulatingSection)
      return fails("note", {
        spoken: `${sayItem(item)}: the pipe is not metal where it comes in, and needs no main bond.`,
        shown:
          "An insulating section at the point of entry: this pipe need not be main bonded. A break some way inside does " +
          "not count the same.",
        which: "insulating section",
      })
    if (toMetOhms === undefined) return notApplicable("Nothing was found out about how this part comes in.")
    const answer = isExtraneous(toMetOhms)
    const inputs = { toMetOhms, clearOhms, bodyOhms, milliamps }
    const working = {
      formula: "least ohms = volts / current, less the body",
      numbers: `${usualExtraneousTest.volts} V / ${milliamps} mA, less ${usualExtraneousTest.bodyOhms} Ω`,
      result: limits,
    }
    if (answer === "may be extraneous")
      return passes({
        spoken: `${sayItem(item)}: by the test it needs its bond.`,
        shown: `${figure(toMetOhms)} Ω to the main terminal (limits ${limits}): bond it. A low reading may also come by another path.`,
        inputs,
        working,
      })
    const isClear = answer === "not extraneous"
    return fails("note", {
      spoken: isClear
        ? `${sayItem(item)}: by the test it needs no main bond. You decide.`
        : `${sayItem(item)}: the test cannot say if it needs a bond. You decide.`,
      shown: `${figure(toMetOhms)} Ω to the main terminal: ${answer} (limits ${limits}). The test is guidance, not a regulation.`,
      which: answer,
      inputs,
      working,
    })
  },
  examples: [
    {
      given: { item: "water", insulatingSection: true },
      verdict: "fails",
      severity: "note",
      which: "insulating section",
    },
    { given: { item: "water", insulatingSection: false }, verdict: "notApplicable" },
    { given: { item: "water" }, verdict: "notApplicable" },
    { given: { item: "water", toMetOhms: 23001 }, verdict: "fails", severity: "note", which: "not extraneous" },
    { given: { item: "water", toMetOhms: 23000 }, verdict: "fails", severity: "note", which: "in doubt" },
    { given: { item: "water", toMetOhms: 22001 }, verdict: "fails", severity: "note", which: "in doubt" },
    { given: { item: "water", toMetOhms: 22000 }, verdict: "passes" },
    { given: { item: "water", toMetOhms: 3 }, verdict: "passes" },
  ],
})
