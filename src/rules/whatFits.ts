/**
 * Says what a reading would fit, when it does not fit what was said: "0.06 Ω fits 33 m of 10 mm²". Often it shows at
 * once which of the values was misheard. It is a hint for the screen; nothing is ever changed because of it.
 */
import { sizesMm2 } from "../facts/Quantity"
import type { Instrument } from "../facts/Situation"
import { expectedOhms } from "./expectedOhms"
import { figure } from "./figures"
import { longestRunM } from "./longestRunM"

interface Said {
  csaMm2: number
  lengthM: number
  instrument: Instrument
}

const fits = (ohms: number, said: Said) => {
  const band = expectedOhms(said)
  return band.ok && ohms >= band.value.low && ohms <= band.value.high
}

/** Other sizes that would read so, the two nearest of them, small first. */
const sizesThatFit = (ohms: number, said: Said): number[] => {
  const away = (csaMm2: number) => {
    const band = expectedOhms({ ...said, csaMm2 })
    return band.ok ? Math.abs(band.value.nominal - ohms) : Number.POSITIVE_INFINITY
  }
  return sizesMm2
    .filter((size) => size !== said.csaMm2 && fits(ohms, { ...said, csaMm2: size }))
    .sort((a, b) => away(a) - away(b))
    .slice(0, 2)
    .sort((a, b) => a - b)
}

/** One sentence, or an empty text where nothing sensible fits. */
export const whatFits = (ohms: number, said: Said): string => {
  const { csaMm2, lengthM } = said
  const metres = longestRunM({ csaMm2 }, ohms)
  const sizes = sizesThatFit(ohms, said)
  const shifted = [ohms / 10, ohms * 10].find((value) => fits(value, said))
  const parts = [
    ...(metres.ok && metres.value >= 1 && metres.value <= 200
      ? [`about ${Math.round(metres.value)} m of ${csaMm2} mm²`]
      : []),
    ...(sizes.length > 0 ? [`${lengthM} m of ${sizes.join(" or ")} mm²`] : []),
  ]
  const point = shifted === undefined ? "" : ` With the point one place over, ${figure(shifted)} Ω would fit.`
  return parts.length === 0 ? point.trim() : `${figure(ohms)} Ω fits ${parts.join(", or ")}.${point}`
}
