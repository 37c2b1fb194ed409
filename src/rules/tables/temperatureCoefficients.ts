/**
 * How much the resistance of a metal grows per kelvin, from 20 °C. British guidance rounds to 0.004; over 50 K the two
 * differ by 0.3 %, so it is always said which one was used.
 */
import { defineTable } from "../Table"

export const temperatureCoefficients = defineTable({
  title: "Temperature coefficient of resistance at 20 °C",
  source: { standard: "IEC 60228", edition: "2004", clause: "annex on temperature correction" },
  unit: "1/K",
  status: "direct",
  rows: [
    { metal: "copper", alphaPerK: 0.00393 },
    { metal: "aluminium", alphaPerK: 0.00403 },
    { metal: "either, British guidance", alphaPerK: 0.004 },
  ],
})
