/** Loop impedance of a circuit: what comes in, and what the circuit adds when warm. */

/** Ze + (R1 + R2) × factor, all in ohms. `warmFactor` is 1 where R1 + R2 is already at working temperature. */
export const zs = ({ ze, r1r2, warmFactor = 1 }: { ze: number; r1r2: number; warmFactor?: number }): number =>
  ze + r1r2 * warmFactor
