/** The least insulation resistance of a circuit and the voltage it is tested with. */
import type { Status } from "../facts/Finding"
import { insulationAdvice } from "./tables/insulationAdvice"
import { insulationLimits } from "./tables/insulationLimits"

export type InsulatedCircuit = (typeof insulationLimits.rows)[number]["circuit"]

export interface InsulationLimit {
  testVolts: number
  leastMegohms: number
  /** Below this it is worth finding out why, even where it passes. */
  lookBelowMegohms: number
  status: Status
}

export const insulationLimit = (circuit: InsulatedCircuit): InsulationLimit => {
  const row = insulationLimits.rows.find((one) => one.circuit === circuit)!
  const { lookBelowMegohms } = insulationAdvice.rows[0]!
  const status: Status = "status" in row ? row.status : insulationLimits.status
  return { testVolts: row.testVolts, leastMegohms: row.leastMegohms, lookBelowMegohms, status }
}
