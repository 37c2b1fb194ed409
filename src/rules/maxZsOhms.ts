/**
 * The most loop impedance with which a device still cuts off in time, conductors warm. For breakers it is worked out and
 * not rounded: the printed figures round halves up, which is on the wrong side by a hair.
 */
import type { Source, Status } from "../facts/Finding"
import { done, type Outcome, refuse } from "../facts/Outcome"
import { breakerCurrents } from "./tables/breakerCurrents"
import { coldFactor } from "./tables/coldFactor"
import { fuseZs } from "./tables/fuseZs"
import { supplyVoltage } from "./tables/supplyVoltage"

/** Breakers by type, fuses by standard: BS 88-2 systems E and G, BS 88-3 system C. */
export const protectiveDevices = ["B", "C", "D", "BS 88-2", "BS 88-3", "BS 3036", "BS 1362"] as const
export type ProtectiveDevice = (typeof protectiveDevices)[number]

export interface Protection {
  device: ProtectiveDevice
  ratingA: number
  /** Disconnection time in seconds; 0.4 unless told otherwise. */
  seconds?: number
}

export interface MaxZs {
  ohms: number
  status: Status
  source: Source
  /** Current that operates the device, where the figure was worked out. */
  operatingA?: number
}

/** U0 × Cmin / Ia in ohms, not rounded. */
export const zsForCurrent = (operatingA: number): number => {
  const { volts, leastFactor } = supplyVoltage.rows[0]!
  return (volts * leastFactor) / operatingA
}

/** Ohms, and how well they are known. Refuses ratings that no table lists and times that no row covers. */
export const maxZsOhms = ({ device, ratingA, seconds = 0.4 }: Protection): Outcome<MaxZs> => {
  const breaker = breakerCurrents.rows.find((row) => row.device === device && seconds <= row.upToSeconds)
  if (breaker) {
    const operatingA = breaker.multiple * ratingA
    return done({ ohms: zsForCurrent(operatingA), status: "derived", source: breakerCurrents.source, operatingA })
  }
  const fuse = fuseZs.rows.find((row) => row.device === device && row.ratingA === ratingA && row.seconds === seconds)
  return fuse
    ? done({ ohms: fuse.ohms, status: fuse.status, source: fuseZs.source })
    : refuse(`There is no figure for ${device}, ${ratingA} amps, ${seconds} seconds.`)
}

/** What may be measured on cold conductors for a figure that holds for warm ones: 0.8 of it, in ohms, not rounded. */
export const mostColdZsOhms = (warmOhms: number): number => warmOhms * coldFactor.rows[0]!.factor
