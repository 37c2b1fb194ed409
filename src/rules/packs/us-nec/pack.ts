/** The pack of the United States. Thin: tables in wire gauges only, since a bond in mm² cannot be judged by them. */
import type { Pack } from "../../Pack"
import { necBondingJumper } from "../../tables/necBondingJumper"
import { necElectrodeConductor } from "../../tables/necElectrodeConductor"
import { necEquipmentConductor } from "../../tables/necEquipmentConductor"
import { necLargeJumper } from "../../tables/necLargeJumper"
import { wireGauges } from "../../tables/wireGauges"
import { universalRules } from "../../universal/universalRules"

export const usNec: Pack = {
  id: "us-nec",
  title: "United States, NEC (thin)",
  edition: "NEC of 2020 and later, at second hand",
  newer: "Editions differ, and states adopt them at different times. Look in the one that is in force where you are.",
  thin: true,
  rules: [...universalRules],
  tables: [necElectrodeConductor, necBondingJumper, necLargeJumper, necEquipmentConductor, wireGauges],
  questions: [],
}
