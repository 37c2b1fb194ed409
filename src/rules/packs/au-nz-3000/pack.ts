/** The pack of Australia and New Zealand. Thin: one table of unknown edition, and two figures from memory. */
import type { Pack } from "../../Pack"
import { auBonding } from "../../tables/auBonding"
import { auEarthing } from "../../tables/auEarthing"
import { universalRules } from "../../universal/universalRules"
import { auBondSize } from "./auBondSize"

export const auNz3000: Pack = {
  id: "au-nz-3000",
  title: "Australia and New Zealand, AS/NZS 3000 (thin)",
  edition: "AS/NZS 3000, edition not known",
  newer: "The page that the figures come from names no edition. Look in the one that is in force.",
  thin: true,
  rules: [auBondSize, ...universalRules],
  tables: [auEarthing, auBonding],
  questions: [],
}
