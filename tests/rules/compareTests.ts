/** Test limits, loops and guidance against the collected values. */
import { disconnectionSeconds } from "../../src/rules/disconnectionSeconds"
import { expectedOhms, usualInstrument } from "../../src/rules/expectedOhms"
import { insulationLimit } from "../../src/rules/insulationLimit"
import { leastExtraneousOhms } from "../../src/rules/leastExtraneousOhms"
import { maxZsOhms, mostColdZsOhms, type ProtectiveDevice } from "../../src/rules/maxZsOhms"
import { mostElectrodeOhms } from "../../src/rules/mostTouchOhms"
import { packs } from "../../src/rules/packs"
import { ukBs7671 } from "../../src/rules/packs/uk-bs7671/pack"
import { rcdTripMs } from "../../src/rules/rcdTripMs"
import { ringR1r2Ohms, ringRatios } from "../../src/rules/ringChecks"
import { breakerCurrents } from "../../src/rules/tables/breakerCurrents"
import { continuityAdvice } from "../../src/rules/tables/continuityAdvice"
import { declaredFault } from "../../src/rules/tables/declaredFault"
import { electrodeAdvice } from "../../src/rules/tables/electrodeAdvice"
import { finalCircuits } from "../../src/rules/tables/finalCircuits"
import { ringSpread } from "../../src/rules/tables/ringSpread"
import { supplyVoltage } from "../../src/rules/tables/supplyVoltage"
import { touchVoltage } from "../../src/rules/tables/touchVoltage"
import { typicalZe } from "../../src/rules/tables/typicalZe"
import { leadsWereNulled } from "../../src/rules/universal/leadsWereNulled"
import { oneEndWasOff } from "../../src/rules/universal/oneEndWasOff"
import { close, type Make, must, num, numbersIn, same } from "./comparing"

const rangeOf = (range: ReturnType<typeof rcdTripMs>) =>
  range!.leastMs === 0 ? [range!.mostMs] : [range!.leastMs, range!.mostMs]

export const tests: Record<string, Make> = {
  "bs-6433-500": (v) => same(Object.values(insulationLimit("up to 500 V")).slice(0, 2), [v.inputs.test_V, v.expected]),
  "bs-6433-selv": (v) =>
    same(Object.values(insulationLimit("SELV or PELV")).slice(0, 2), [v.inputs.test_V, v.expected]),
  "bs-6433-1000": (v) =>
    same(insulationLimit("above 500 V"), {
      testVolts: v.inputs.test_V,
      leastMegohms: v.expected,
      lookBelowMegohms: 2,
      status: "memory",
    }),
  "bs-6433-investigate": (v) => close(insulationLimit("up to 500 V").lookBelowMegohms, v, 0),
  "bs-6437-300": (v) => same(rangeOf(rcdTripMs("general", 1)), [v.expected]),
  "bs-6437-s": (v) => same(rangeOf(rcdTripMs("delayed", 1)), numbersIn(v.expected)),
  "bs-3a-": (v) =>
    same(rangeOf(rcdTripMs(v.inputs.type === "S" ? "delayed" : "general", num(v, "test_x"))), numbersIn(v.expected)),
  "bs-rcd-tt": (v) =>
    same(
      [
        num(v, "trip_ms") <= rcdTripMs("general", 1)!.mostMs,
        num(v, "trip_ms") <= disconnectionSeconds("TT", true) * 1000,
      ],
      [true, false],
    ),
  "bs-411-scope": (v) =>
    same(
      finalCircuits.rows.map((row) => row.mostA),
      numbersIn(v.expected),
    ),
  "bs-411-tt-note": () => same(disconnectionSeconds("TT", true, true), disconnectionSeconds("TN-S", true)),
  "bs-411-": (v) =>
    close(disconnectionSeconds(v.inputs.system === "TT" ? "TT" : "TN-S", v.inputs.circuit === "final"), v, 0),
}

const device = (name: unknown) => String(name).replace(/ E\/G| C$/, "") as ProtectiveDevice
export const loops: Record<string, Make> = {
  "bs-zs-formula": (v) =>
    same(
      [...Object.values(supplyVoltage.rows[0]!), ...breakerCurrents.rows.map((row) => row.multiple)],
      [v.inputs.U0, v.inputs.Cmin, 5, 10, 20, 10],
    ),
  "bs-413": (v) => {
    const seconds = String(v.inputs.t_s) === "5" ? 5 : 0.4
    return close(must(maxZsOhms({ device: device(v.inputs.type), ratingA: num(v, "In_A"), seconds })).ohms, v, 0.0051)
  },
  "bs-412-bs88-3-32": (v) =>
    close(Math.floor(mostColdZsOhms(must(maxZsOhms({ device: "BS 88-3", ratingA: 32 })).ohms) * 100) / 100, v, 0),
  "bs-41": (v) => {
    const found = must(maxZsOhms({ device: device(v.inputs.fuse), ratingA: num(v, "In_A"), seconds: num(v, "t_s") }))
    return same([found.ohms, found.status], [v.expected, v.confirm])
  },
  "tt-50": (v) => same(touchVoltage.rows[0]!.volts, numbersIn(v.expected)[0]),
  "tt-415": (v) => close(mostElectrodeOhms(num(v, "I_delta_n_mA")), v, 0.34),
  "tt-200": (v) => close(electrodeAdvice.rows[0]!.steadyOhms, v, 0),
  "ze-": (v) => close(typicalZe.rows.find((row) => row.arrangement === v.inputs.system)!.usualOhms, v, 0),
  "pfc-16": (v) => close(declaredFault.rows.find((row) => row.phases === 1)!.mostKa, v, 0),
  "pfc-25": (v) => close(declaredFault.rows.find((row) => row.phases === 3)!.mostKa, v, 0),
}

const allSources = () => packs.flatMap((pack) => [...pack.rules, ...pack.tables].map((one) => one.source))
export const guidance: Record<string, Make> = {
  "a4-dates": (v) => {
    const months = ["April", "October"]
    const dates = Object.values(v.expected as Record<string, string>).map(
      (date, at) => `${Number(date.slice(8))} ${months[at]} ${date.slice(0, 4)}`,
    )
    return same(
      dates.filter((date) => ukBs7671.newer.includes(date)),
      dates,
    )
  },
  "a4-scope": () =>
    same(
      allSources().filter((source) => /A4/.test(source.edition)),
      [],
    ),
  "ecp-formula": () => same(leastExtraneousOhms({ volts: 100, milliamps: 20, bodyOhms: 500 }), 4500),
  "ecp-": (v) => {
    const test = { volts: num(v, "U0_V"), milliamps: num(v, "Ib_mA"), bodyOhms: num(v, "ZTL_ohm") }
    return close(leastExtraneousOhms(test), v, 0.5)
  },
  "bond-005": (v) => {
    const { nominal } = must(expectedOhms({ csaMm2: num(v, "csa_mm2"), lengthM: num(v, "length_m") }))
    return close(nominal, v, 0.005)
  },
  "bond-limit": (v) => close(continuityAdvice.rows[0]!.acceptOhms, v, 0),
  "bond-disc": () => same(oneEndWasOff.judge({ item: "gas", ohms: 0.05, readWithOneEndOff: false }).verdict, "fails"),
  null: () => same(leadsWereNulled.judge({ item: "gas", ohms: 0.05, readWithLeadsNulled: false }).verdict, "fails"),
  "inst-acc": (v) => same([usualInstrument.percent, usualInstrument.digits], numbersIn(v.expected).slice(0, 2)),
  "ring-equal": (v) => close(ringSpread.rows[0]!.spreadOhms, v, 0),
  "ring-167": (v) => close(must(ringRatios(num(v, "line_mm2"), num(v, "cpc_mm2"))).byArea, v, 0.005),
  "ring-quarter": () => same(ringR1r2Ohms({ r1: 0.8, r2: 1.2 }), 0.5),
}
