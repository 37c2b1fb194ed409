/** How long a fault may last, by the system and the sort of circuit (Table 41.1 at 230 V). */
import type { Arrangement } from "../facts/Fact"
import { disconnectionTimes } from "./tables/disconnectionTimes"
import { finalCircuits } from "./tables/finalCircuits"

/** Whether a circuit counts as final, by its rating in amperes and whether it feeds sockets. */
export const isFinalCircuit = (ratingA: number, hasSockets: boolean): boolean =>
  ratingA <= finalCircuits.rows.find((row) => row.hasSockets === hasSockets)!.mostA

/** In seconds. A TT circuit may take the TN times only where all parts are bonded and an overcurrent device cuts off. */
export const disconnectionSeconds = (arrangement: Arrangement, isFinal: boolean, tnTimesMayBeUsed = false): number => {
  const system = arrangement === "TT" && !tnTimesMayBeUsed ? "TT" : "TN"
  const circuit = isFinal ? "final" : "distribution"
  return disconnectionTimes.rows.find((row) => row.system === system && row.circuit === circuit)!.seconds
}
