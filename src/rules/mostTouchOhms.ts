/**
 * The ohms at which 50 V drive a device to cut off: 50/Ia. It serves supplementary bonds (415.2.2) and electrodes
 * (411.5.3). Ia is the current that operates the device, not its rating: the two are often mixed up.
 */
import { touchVoltage } from "./tables/touchVoltage"

/** In ohms, not rounded. A limit is compared with this or with less, never with the rounded-up figure of a table. */
export const mostTouchOhms = (operatingA: number): number => touchVoltage.rows[0]!.volts / operatingA

/** The same for a residual current in mA. */
export const mostElectrodeOhms = (residualMa: number): number => mostTouchOhms(residualMa / 1000)
