/** Other countries and worked examples against the collected values. */
import { adiabaticMm2 } from "../../src/rules/adiabaticMm2"
import { expectedOhms } from "../../src/rules/expectedOhms"
import { kcmilOf } from "../../src/rules/kcmilOf"
import { leastSeparateMm2 } from "../../src/rules/leastEarthingConductorMm2"
import { leastExtraneousOhms } from "../../src/rules/leastExtraneousOhms"
import { leastProtectiveMm2 } from "../../src/rules/leastProtectiveMm2"
import { longestRunM } from "../../src/rules/longestRunM"
import { maxZsOhms, mostColdZsOhms } from "../../src/rules/maxZsOhms"
import { mostElectrodeOhms, mostTouchOhms } from "../../src/rules/mostTouchOhms"
import { bondingJumperSize, electrodeConductorSize, equipmentConductorSize } from "../../src/rules/necSizes"
import { auNz3000 } from "../../src/rules/packs/au-nz-3000/pack"
import { prospectiveFaultA } from "../../src/rules/prospectiveFaultA"
import { r1r2 } from "../../src/rules/r1r2"
import { auBonding } from "../../src/rules/tables/auBonding"
import { auEarthing } from "../../src/rules/tables/auEarthing"
import { iecBondLimits } from "../../src/rules/tables/iecBondLimits"
import { iecHalfRule } from "../../src/rules/tables/iecHalfRule"
import { iecPen } from "../../src/rules/tables/iecPen"
import { necLargeJumper } from "../../src/rules/tables/necLargeJumper"
import { zs } from "../../src/rules/zs"
import { close, type Make, must, num, numbersIn, same } from "./comparing"

export const abroad: Record<string, Make> = {
  "iec-5441-min": (v) =>
    same([...iecBondLimits.rows.map((row) => row.leastMm2), iecBondLimits.rows[0]!.mostMm2], numbersIn(v.expected)),
  "iec-5441-half": (v) => same([iecHalfRule.rows[0]!.share, iecHalfRule.status], [0.5, v.confirm]),
  "iec-pe": (v) => {
    const [at16, , , at35, , half, safe, bare, copper, aluminium] = numbersIn(v.expected)
    return same(
      {
        byLine: [16, 35, 70].map(leastProtectiveMm2),
        separate: [leastSeparateMm2(true), leastSeparateMm2(false)],
        pen: iecPen.rows.map((row) => row.leastPenMm2),
      },
      { byLine: [at16, at35, 70 / half!], separate: [safe, bare], pen: [copper, aluminium] },
    )
  },
  "de-tt25": (v) => close(iecPen.rows[0]!.mostTtMm2, v, 0),
  "au-earth": (v) => close(auEarthing.rows.find((row) => row.activeMm2 === num(v, "active_Cu_mm2"))!.earthingMm2, v, 0),
  "au-bond4": (v) => same([auBonding.rows[0]!.leastBondMm2, auBonding.status], [v.expected, v.confirm]),
  "au-05": (v) => same([auBonding.rows[0]!.mostOhms, auNz3000.thin], [v.expected, true]),
  "us-25066": (v) =>
    same(
      sizesIn(v.inputs.largest_ungrounded_Cu_AWG_kcmil).map((size) => must(electrodeConductorSize(size))),
      sizesIn(v.inputs.largest_ungrounded_Cu_AWG_kcmil).map(() => v.expected),
    ),
  "us-250122": (v) => {
    const amps = num(v, "ocpd_A")
    return same(
      { Cu: must(equipmentConductorSize(amps, "copper")), Al: must(equipmentConductorSize(amps, "aluminium")) },
      v.expected,
    )
  },
  "us-250102-0": (v) => same(`${bondingJumperSize(250, "copper").copper} AWG Cu`, v.expected),
  "us-250102-1": (v) => same(`${bondingJumperSize(3 * 250, "copper").copper} AWG Cu`, v.expected),
  "us-250102-2": (v) => {
    const jumper = bondingJumperSize(2 * must(kcmilOf("3/0")), "copper")
    return same(`${jumper.copper} AWG Cu or ${jumper.aluminium} Al`, v.expected)
  },
  "us-250102-3": (v) => same(`${bondingJumperSize(must(kcmilOf("4/0")), "aluminium").copper} AWG Cu`, v.expected),
  "us-250102-125": (v) => close(necLargeJumper.rows[0]!.share * 100, v, 0),
}
/** The sizes that stand for a line of the American table: those it names, or ones just inside its ends. */
const sizesIn = (text: unknown): string[] => {
  const words = String(text)
  if (words === "over 1100") return ["1250", "2000"]
  if (words === "2 or smaller") return ["8", "2"]
  const [low, high] = words.replace("over ", "").split(/ to | or /)
  return words.startsWith("over 3/0")
    ? ["4/0", high!]
    : words.startsWith("over")
      ? [String(Number(low) + 1), high!]
      : [low!, high!]
}

export const worked: Record<string, Make> = {
  "ex-len6-16": (v) => close(must(longestRunM({ csaMm2: 6 }, num(v, "R_ohm"))), v, 0.5),
  "ex-bond25": (v) => close(must(expectedOhms({ csaMm2: 10, lengthM: 25 })).nominal, v, 1e-9),
  "ex-r1": (v) => close(must(expectedOhms({ csaMm2: 2.5, lengthM: 22 })).nominal, v, 0.001),
  "ex-r50": (v) => close(must(expectedOhms({ csaMm2: 1.5, lengthM: 50 })).nominal, v, 0.001),
  "ex-zs1": (v) =>
    close(
      zs({ ze: num(v, "Ze"), r1r2: must(r1r2({ lineMm2: 1.5, cpcMm2: 1, lengthM: 10 })), warmFactor: 1.2 }),
      v,
      0.01,
    ),
  "ex-zs2hot": (v) =>
    close(
      zs({ ze: num(v, "Ze"), r1r2: must(r1r2({ lineMm2: 1.5, cpcMm2: 1, lengthM: 15, temperatureC: 70 })) }),
      v,
      0.001,
    ),
  "ex-ad3": (v) =>
    close(must(adiabaticMm2({ faultA: num(v, "I_A"), seconds: num(v, "t_s"), k: num(v, "k") })), v, 0.01),
  "ex-b45": (v) => close(must(maxZsOhms({ device: "B", ratingA: num(v, "In") })).ohms, v, 0.01),
  "ex-b6": (v) => close(mostColdZsOhms(num(v, "Zs")), v, 0.01),
  "ex-ra": (v) => close(1000 * mostTouchOhms(num(v, "RA")), v, 0),
  "ex-rcd30": (v) => close(Math.round(mostElectrodeOhms(num(v, "I_delta_n_mA"))), v, 0),
  "ex-ecp10": (v) => close(leastExtraneousOhms({ volts: num(v, "U0"), milliamps: num(v, "I_mA") }), v, 0),
  // The two origins of the old loop figures are Ohm's law: 36.8 V over 100 A, and 240 V driving 300 A.
  "ex-ze-tncs": (v) => ({
    got: prospectiveFaultA(Number(v.expected), num(v, "drop_V")),
    want: v.inputs.I_A,
    within: 1e-9,
  }),
  "ex-ze-tns": (v) => ({ got: prospectiveFaultA(Number(v.expected), num(v, "U")), want: v.inputs.I, within: 1e-9 }),
  "ex-us1": (v) => same(`${bondingJumperSize(2 * must(kcmilOf("3/0")), "copper").copper} AWG Cu`, v.expected),
  "ex-maxlen": (v) => close(must(longestRunM({ csaMm2: num(v, "csa") }, num(v, "R_ohm"))), v, 0.1),
}
