/** Numbers as they are shown on the screen: no more digits than they carry, and never an exponent. */

/** Up to four significant digits: 0.04758 Ω, 18.35 mm², 1667 Ω. */
export const figure = (value: number) =>
  value >= 1000 ? String(Math.round(value)) : String(Number(value.toPrecision(4)))

/** Two places, as a low-resistance meter shows them: 0.05. */
export const hundredths = (ohms: number) => ohms.toFixed(2)
