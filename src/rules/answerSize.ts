/** Answers a question about a size or a reading with its sum and its clause. Refusals say which value is needed. */
import { done, type Outcome, refuse } from "../facts/Outcome"
import { adiabaticMm2 } from "./adiabaticMm2"
import { copperEquivalentMm2 } from "./copperEquivalentMm2"
import { alphaOf, britishAlphaPerK, correctOhmsForTemperature } from "./correctOhmsForTemperature"
import { expectedOhms } from "./expectedOhms"
import { figure } from "./figures"
import { leastEarthingConductorMm2 } from "./leastEarthingConductorMm2"
import { leastExtraneousOhms, usualExtraneousTest } from "./leastExtraneousOhms"
import { leastMainBondMm2 } from "./leastMainBondMm2"
import { longestRunM } from "./longestRunM"
import { maxZsOhms, mostColdZsOhms } from "./maxZsOhms"
import { mostTouchOhms } from "./mostTouchOhms"
import { nextSizeUp } from "./nextSizeUp"
import { r1r2 } from "./r1r2"
import type { Asked, SizeAnswer, SizeAsk, SizeQuestion } from "./SizeQuestion"
import { conductorResistance } from "./tables/conductorResistance"
import { mainBondLimits } from "./tables/mainBondLimits"
import { pmeBonds } from "./tables/pmeBonds"
import { touchVoltage } from "./tables/touchVoltage"
import { zs } from "./zs"

type Answering = { [Ask in SizeAsk]: (asked: Asked<Ask>) => Outcome<SizeAnswer> }

/** Six digits at most, so that a binary tail is never printed, and never above the true figure: a limit stays a limit. */
const cutDown = (value: number) => {
  const scale = 10 ** (5 - Math.floor(Math.log10(value)))
  return Math.floor(value * scale + 1e-6) / scale
}
const plain = (value: number) => Number(value.toPrecision(6))
const isoClause = `${conductorResistance.source.standard}, ${conductorResistance.source.clause}`

const neutralOf = ({ neutral_mm2, copper_equivalent }: Asked<"main_bond">): Outcome<number> => {
  if (typeof copper_equivalent === "number") return done(copper_equivalent)
  if (neutral_mm2 === undefined) return refuse("The size of the supply neutral is needed: neutral_mm2.")
  return copper_equivalent ? done(neutral_mm2) : copperEquivalentMm2(neutral_mm2)
}

const mainBond = (asked: Asked<"main_bond">): Outcome<SizeAnswer> => {
  if (asked.arrangement === "TN-C-S") {
    const neutral = neutralOf(asked)
    if (!neutral.ok) return neutral
    const neutralMm2 = neutral.value
    return done({
      value: leastMainBondMm2({ arrangement: "TN-C-S", neutralMm2 })!,
      unit: "mm2",
      because: `PME supply with a neutral of ${figure(neutralMm2)} mm² copper equivalent; a distributor may ask for more`,
      clause: `${pmeBonds.source.standard} ${pmeBonds.source.clause}`,
      status: asked.copper_equivalent === false ? "derived" : pmeBonds.status,
    })
  }
  const earthingMm2 = asked.earthing_conductor_mm2
  if (earthingMm2 === undefined)
    return refuse("The size of the required earthing conductor is needed: earthing_conductor_mm2.")
  const { leastMm2, mostMm2 } = mainBondLimits.rows[0]!
  return done({
    value: leastMainBondMm2({ arrangement: asked.arrangement, earthingMm2 })!,
    unit: "mm2",
    because: `half of ${earthingMm2} mm² is ${earthingMm2 / 2}, at least ${leastMm2}, no more than ${mostMm2} needed, next size up`,
    clause: `${mainBondLimits.source.standard} ${mainBondLimits.source.clause}`,
    status: mainBondLimits.status,
  })
}

const earthingConductor = (asked: Asked<"earthing_conductor">): Outcome<SizeAnswer> => {
  const { fault_a, seconds, k, line_mm2 } = asked
  const isFault = fault_a !== undefined || seconds !== undefined || k !== undefined
  if (isFault && (fault_a === undefined || seconds === undefined || k === undefined))
    return refuse("A sum for the fault needs all three: fault_a, seconds and k.")
  if (asked.arrangement === "TN-C-S" && asked.neutral_mm2 === undefined)
    return refuse("The size of the supply neutral is needed: neutral_mm2.")
  const found = leastEarthingConductorMm2({
    lineMm2: line_mm2,
    ...(isFault && { fault: { faultA: fault_a!, seconds: seconds!, k: k! } }),
    metal: asked.metal,
    buried: asked.buried,
    corrosionProtected: asked.corrosion_protected,
    mechanicallyProtected: asked.mechanically_protected,
    ...(asked.arrangement !== "TN-S" && asked.arrangement !== "TT" && { pmeNeutralMm2: asked.neutral_mm2 }),
  })
  if (!found.ok) return found
  const { leastMm2, decides, parts } = found.value
  return done({
    value: leastMm2,
    unit: "mm2",
    because: parts.map((part) => `${part.because}: ${figure(part.leastMm2)} mm²`).join("; "),
    clause: `BS 7671 ${decides.clause}`,
    status: decides.status,
  })
}

const expected = (asked: Asked<"expected_ohms">): Outcome<SizeAnswer> => {
  const { csa_mm2: csaMm2, length_m: lengthM, material: metal, conductor_class: conductorClass } = asked
  const at = asked.temperature_c
  const band = expectedOhms({ csaMm2, lengthM, metal, conductorClass, ...(at !== undefined && { temperatureC: at }) })
  if (!band.ok) return band
  const { nominal, low, high, ohmsPerM } = band.value
  return done({
    value: plain(nominal),
    unit: "ohm",
    because:
      `${lengthM} m × ${figure(ohmsPerM)} Ω/m at ${at ?? 20} °C (${alphaOf(metal)} per K); a meter may show ` +
      `${figure(low)} to ${figure(high)} Ω with an assumed error of 2 % and 3 digits`,
    clause: isoClause,
    status: conductorResistance.status === "direct" ? "derived" : conductorResistance.status,
  })
}

const longestRun = (asked: Asked<"longest_run">): Outcome<SizeAnswer> => {
  const { csa_mm2: csaMm2, ohms, material: metal, conductor_class: conductorClass } = asked
  const metres = longestRunM({ csaMm2, metal, conductorClass }, ohms)
  if (!metres.ok) return metres
  const because = `${ohms} Ω of ${csaMm2} mm² ${metal} at 20 °C, by the most that it may measure`
  return done({ value: plain(metres.value), unit: "m", because, clause: isoClause, status: "derived" })
}

const adiabatic = ({ fault_a, seconds, k }: Asked<"adiabatic">): Outcome<SizeAnswer> => {
  const least = adiabaticMm2({ faultA: fault_a, seconds, k })
  if (!least.ok) return least
  const size = nextSizeUp(least.value)
  const take = size === null ? "no size listed here is enough" : `take ${size} mm²`
  const because = `√(${fault_a}² × ${seconds}) / ${k}; ${take}`
  return done({ value: plain(least.value), unit: "mm2", because, clause: "BS 7671 543.1.3", status: "derived" })
}

const temperature = ({ ohms, from_c, to_c, alpha = britishAlphaPerK }: Asked<"temperature">): Outcome<SizeAnswer> => {
  const value = plain(correctOhmsForTemperature(ohms, { fromC: from_c, toC: to_c, alphaPerK: alpha }))
  const because = `${ohms} Ω × (1 + ${alpha} × ${to_c - 20}) / (1 + ${alpha} × ${from_c - 20})`
  return done({ value, unit: "ohm", because, clause: "IEC 60228 annex; British guidance has 0.004", status: "derived" })
}

/** The currents whose ohms were seen worked out; for others only the formula was. */
const seenMilliamps = [10, 30]

const extraneous = ({ milliamps, body_ohms, volts }: Asked<"extraneous">): Outcome<SizeAnswer> => {
  const bodyOhms = body_ohms ?? usualExtraneousTest.bodyOhms
  const ohms = leastExtraneousOhms({ milliamps, bodyOhms, ...(volts !== undefined && { volts }) })
  if (ohms <= 0) return refuse("That current is never reached with body_ohms as large as that.")
  const because =
    `${volts ?? usualExtraneousTest.volts} V / ${milliamps} mA, ` +
    `${bodyOhms === 0 ? "no body counted" : `less a body of ${bodyOhms} Ω`}, rounded up; above it the part is not extraneous`
  return done({
    value: Math.ceil(ohms - 1e-6),
    unit: "ohm",
    because,
    clause: "guidance GN8, not a regulation",
    status: seenMilliamps.includes(milliamps) ? "direct" : "derived",
  })
}

/** 50 V over the current that operates the device; a limit, so never rounded up. */
const byTouchVoltage = (operatingA: number, clause: string): Outcome<SizeAnswer> =>
  done({
    value: cutDown(mostTouchOhms(operatingA)),
    unit: "ohm",
    because: `${touchVoltage.rows[0]!.volts} V / ${figure(operatingA)} A, not rounded up`,
    clause: `BS 7671 ${clause}`,
    status: "derived",
  })

const supplementary = ({ operating_a, residual_ma }: Asked<"supplementary">): Outcome<SizeAnswer> => {
  if (operating_a !== undefined) return byTouchVoltage(operating_a, "415.2.2")
  if (residual_ma !== undefined) return byTouchVoltage(residual_ma / 1000, "415.2.2")
  return refuse("The current that operates the device is needed: operating_a or residual_ma.")
}

const maxZs = ({ device, rating_a, seconds }: Asked<"max_zs">): Outcome<SizeAnswer> => {
  const found = maxZsOhms({ device, ratingA: rating_a, ...(seconds !== undefined && { seconds }) })
  if (!found.ok) return found
  const { ohms, operatingA, status, source } = found.value
  const sum = operatingA === undefined ? "by the table" : `230 V × 0.95 / ${operatingA} A`
  const book = status === "memory" ? "; from memory, look it up in the book" : ""
  const because = `${sum}, conductors warm; cold measure no more than ${cutDown(mostColdZsOhms(ohms))} Ω${book}`
  return done({ value: cutDown(ohms), unit: "ohm", because, clause: `${source.standard} ${source.clause}`, status })
}

const loop = ({ ze, r1_r2, warm_factor = 1 }: Asked<"zs">): Outcome<SizeAnswer> =>
  done({
    value: plain(zs({ ze, r1r2: r1_r2, warmFactor: warm_factor })),
    unit: "ohm",
    because: `${ze} + ${r1_r2}${warm_factor === 1 ? "" : ` × ${warm_factor}`} Ω`,
    clause: "Zs = Ze + (R1 + R2)",
    status: "derived",
  })

const outAndBack = (asked: Asked<"r1_r2">): Outcome<SizeAnswer> => {
  const { line_mm2: lineMm2, cpc_mm2: cpcMm2, length_m: lengthM, temperature_c: temperatureC = 20 } = asked
  const ohms = r1r2({ lineMm2, cpcMm2, lengthM, temperatureC, metal: asked.material })
  if (!ohms.ok) return ohms
  const because = `${lengthM} m of ${lineMm2} and ${cpcMm2} mm² at ${temperatureC} °C (${britishAlphaPerK} per K)`
  return done({ value: plain(ohms.value), unit: "ohm", because, clause: isoClause, status: "derived" })
}

const answering: Answering = {
  main_bond: mainBond,
  earthing_conductor: earthingConductor,
  expected_ohms: expected,
  longest_run: longestRun,
  adiabatic,
  temperature,
  extraneous,
  supplementary,
  electrode: ({ residual_ma }) => byTouchVoltage(residual_ma / 1000, "411.5.3, Table 41.5"),
  max_zs: maxZs,
  zs: loop,
  r1_r2: outAndBack,
}

/** The figure with its reason, or what is missing. */
export const answerSize = <Ask extends SizeAsk>(question: Asked<Ask> & SizeQuestion): Outcome<SizeAnswer> =>
  (answering[question.ask as Ask] as (asked: Asked<Ask>) => Outcome<SizeAnswer>)(question)
