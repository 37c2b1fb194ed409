/**
 * The clamp of a pipe that comes in sits as near to its entry as can be, within 600 mm of the meter where that can be
 * done. It is never a plain breach: where it cannot be done, the place of entry will do (544.1.2).
 */
import { z } from "zod"
import { figure } from "../../figures"
import { knownAs } from "../../knownAs"
import { comesIn, entryMarks } from "../../partKind"
import { asks, defineRule, fails, notApplicable, passes } from "../../Rule"
import { sayItem, sayMillimetres, startWithNumber } from "../../sayings"

export const clampNearEntry = defineRule({
  name: "clampNearEntry",
  title: "The clamp is within 600 mm of the meter or the entry, where that can be done.",
  source: { standard: "BS 7671", edition: "2018", clause: "544.1.2" },
  status: "direct",
  of: ["main_bond"],
  needs: z.object({
    item: knownAs.item,
    distanceMm: knownAs.mm.optional(),
    distanceQualifier: knownAs.qualifier.optional(),
  }),
  limits: { mostMm: 600 },
  judge({ item, distanceMm, distanceQualifier }, { mostMm }) {
    if (!comesIn(item)) return notApplicable("This part has no meter and no single place of entry.")
    if (distanceMm === undefined)
      return item in entryMarks ? asks("distanceMm") : notApplicable("No distance was said for this part.")
    const place = entryMarks[item] ?? "entry"
    const inputs = { distanceMm, mostMm, distanceQualifier: distanceQualifier ?? null }
    const isMore = distanceQualifier === ">"
    // "Less than a metre" and "over three hundred" leave it open.
    if (isMore ? distanceMm < mostMm : distanceQualifier !== undefined && distanceMm > mostMm) return asks("distanceMm")
    if (!isMore && distanceMm <= mostMm)
      return passes({
        spoken: `${sayItem(item)}: the clamp is near enough.`,
        shown: `The clamp is ${figure(distanceMm)} mm from the ${place}; up to ${mostMm} mm is wanted.`,
        inputs,
      })
    return fails("warn", {
      spoken:
        `${sayItem(item)}: the clamp is ${isMore ? "over " : ""}${sayMillimetres(distanceMm)} away. ` +
        `${startWithNumber(mostMm)} is the most where it can be done. Move it nearer.`,
      shown:
        `The clamp is ${isMore ? "over " : ""}${figure(distanceMm)} mm from the ${place}. It belongs within ${mostMm} mm ` +
        "where that is practicable, on hard metal pipe on the consumer's side and before any branch; else at the " +
        "nearest practicable place, or at the entry if the meter is outside.",
      inputs,
    })
  },
  examples: [
    { given: { item: "gas", distanceMm: 600 }, verdict: "passes" },
    { given: { item: "gas", distanceMm: 599 }, verdict: "passes" },
    { given: { item: "gas", distanceMm: 601 }, verdict: "fails", severity: "warn" },
    { given: { item: "water", distanceMm: 0 }, verdict: "passes" },
    { given: { item: "water", distanceMm: 600, distanceQualifier: "<" }, verdict: "passes" },
    { given: { item: "water", distanceMm: 600, distanceQualifier: "<=" }, verdict: "passes" },
    { given: { item: "water", distanceMm: 1000, distanceQualifier: "<" }, verdict: "asks" },
    { given: { item: "water", distanceMm: 600, distanceQualifier: ">" }, verdict: "fails", severity: "warn" },
    { given: { item: "water", distanceMm: 599, distanceQualifier: ">" }, verdict: "asks" },
    { given: { item: "oil" }, verdict: "asks" },
    { given: { item: "structural_steel", distanceMm: 3000 }, verdict: "notApplicable" },
    { given: { item: "heating", distanceMm: 3000 }, verdict: "notApplicable" },
    { given: { item: "lightning_protection" }, verdict: "notApplicable" },
    { given: { item: "roof_frame", distanceMm: 3000 }, verdict: "notApplicable" },
    { given: { item: "air_pipe" }, verdict: "notApplicable" },
    { given: { item: "air_pipe", distanceMm: 900 }, verdict: "fails", severity: "warn" },
  ],
})
