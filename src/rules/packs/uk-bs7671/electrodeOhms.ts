/**
 * An electrode's resistance: low enough that 50 V trip the residual current device, and low enough to stay steady. The
 * first is a limit and is compared without rounding up; the second is advice.
 */
import { z } from "zod"
import { knownAs } from "../../knownAs"
import { mostElectrodeOhms } from "../../mostTouchOhms"
import { asks, defineRule, fails, passes } from "../../Rule"
import { sayItem, sayOhms, startWithNumber } from "../../sayings"
import { electrodeAdvice } from "../../tables/electrodeAdvice"

const { steadyOhms, usualResidualMa } = electrodeAdvice.rows[0]!

export const electrodeOhms = defineRule({
  name: "electrodeOhms",
  title: "An electrode lets 50 V trip its residual current device, and is steady.",
  source: { standard: "BS 7671", edition: "2018+A2:2022", clause: "411.5.3, Table 41.5" },
  status: "direct",
  of: ["electrode"],
  needs: z.object({
    item: knownAs.item,
    ohms: knownAs.ohms,
    residualMa: knownAs.positive.optional(),
  }),
  limits: { steadyOhms, usualResidualMa },
  judge({ item, ohms, residualMa }) {
    const most = mostElectrodeOhms(residualMa ?? usualResidualMa)
    // Cut, not rounded: a limit is never shown larger than it is.
    const mostOhms = Math.floor(most * 10) / 10
    const inputs = { ohms, mostOhms, steadyOhms, residualMa: residualMa ?? null }
    const sum = `50 V / ${residualMa ?? usualResidualMa} mA = ${mostOhms} Ω`
    const working = { formula: "most ohms = 50 V / residual current", numbers: sum, result: `${mostOhms} Ω` }
    const head = `${sayItem(item)}: ${ohms === null ? "the meter finds no way to earth" : `${sayOhms(ohms)} is`}`
    if (ohms === null || ohms > most)
      return fails("stop", {
        spoken: `${head}${ohms === null ? "" : " too much"}. ${startWithNumber(Math.floor(most))} is the most. Make it less first.`,
        shown: `Above ${sum}, the most that lets this residual current device work${residualMa ? "" : " (30 mA, the smallest usual one)"}.`,
        which: "over the limit",
        inputs,
        working,
      })
    if (ohms > steadyOhms)
      return fails("warn", {
        spoken: `${head} high. Over ${sayOhms(steadyOhms)} it can change in time. Make it less.`,
        shown: `Advice: above ${steadyOhms} Ω an electrode may not stay stable. The limit is ${sum}.`,
        which: "unsteady",
        inputs,
        working,
      })
    if (residualMa === undefined) return asks("residualMa")
    return passes({
      spoken: `${head} low enough.`,
      shown: `No more than ${sum}, and no more than ${steadyOhms} Ω.`,
      inputs,
      working,
    })
  },
  examples: [
    { given: { item: "electrode", ohms: 200, residualMa: 30 }, verdict: "passes" },
    { given: { item: "electrode", ohms: 201, residualMa: 30 }, verdict: "fails", severity: "warn", which: "unsteady" },
    { given: { item: "electrode", ohms: 1666, residualMa: 30 }, verdict: "fails", severity: "warn" },
    { given: { item: "electrode", ohms: 1667, residualMa: 30 }, verdict: "fails", severity: "stop" },
    { given: { item: "electrode", ohms: 100, residualMa: 500 }, verdict: "passes" },
    { given: { item: "electrode", ohms: 101, residualMa: 500 }, verdict: "fails", severity: "stop" },
    { given: { item: "electrode", ohms: 167, residualMa: 300 }, verdict: "fails", severity: "stop" },
    { given: { item: "electrode", ohms: 166, residualMa: 300 }, verdict: "passes" },
    { given: { item: "electrode", ohms: 150 }, verdict: "asks" },
    { given: { item: "electrode", ohms: 2000 }, verdict: "fails", severity: "stop" },
    { given: { item: "electrode", ohms: null, residualMa: 30 }, verdict: "fails", severity: "stop" },
    { given: { item: "electrode" }, verdict: "asks" },
  ],
})
