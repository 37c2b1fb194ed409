/**
 * Readings of conductors against what their size and length make them read. The band is the rules' own; a reading outside
 * it is worth a second look, and one inside it proves nothing by itself.
 */
import { heldFact } from "../../record/holding"
import type { JobRecord } from "../../record/JobRecord"
import { assumedInstrument } from "../../record/toSituation"
import { expectedOhms } from "../../rules/expectedOhms"
import { hundredths } from "../../rules/figures"
import { kindOfItem } from "../../rules/itemKind"
import type { ExportedJob } from "../ExportedJob"
import { itemName, quantity } from "./quantity"
import type { BandDrawing, Block, Cell } from "./Report"

const verdict = ({ low, high, reading, limit }: BandDrawing): { words: string; fits: boolean } => {
  if (reading === null || limit === "above") return { words: "over range", fits: false }
  if (reading < low) return { words: "below the band", fits: false }
  if (limit === "below") return { words: "a limit only, within or below the band", fits: true }
  return reading > high ? { words: "above the band", fits: false } : { words: "inside the band", fits: true }
}

const drawnAs = (record: JobRecord, item: string): Cell[] | null => {
  const size = heldFact(record, item, "conductor_csa")?.fact
  const length = heldFact(record, item, "length")?.fact
  const reading = heldFact(record, item, "resistance")?.fact
  if (!size || !length || !reading) return null
  const band = expectedOhms({ csaMm2: size.value, lengthM: length.value, instrument: assumedInstrument })
  if (!band.ok) return null
  const { low, nominal, high } = band.value
  const limit = reading.qualifier === undefined ? undefined : reading.qualifier === ">" ? "above" : "below"
  const drawing: BandDrawing = { low, nominal, high, reading: reading.value, alt: "", ...(limit && { limit }) }
  const { words, fits } = verdict(drawing)
  const expected = `${hundredths(low)} to ${hundredths(high)} Ω`
  drawing.alt = `A bar from nought. Band ${expected}, middle ${hundredths(nominal)} Ω; reading ${quantity(reading)}, ${words}.`
  return [
    { text: itemName(item), under: `${quantity(size)}, ${quantity(length)}` },
    { text: expected, under: `about ${hundredths(nominal)} Ω` },
    { text: quantity(reading) },
    { text: words, mark: fits ? "fits" : "warn" },
    { text: "", band: drawing },
  ]
}

/** The section, or nothing where no reading has a size and a length beside it. */
export const readingSection = ({ record }: ExportedJob): Block[] => {
  const measured = new Set(["main_bond", "earthing_conductor", "supplementary_bond"])
  const rows = record.items
    .filter((item) => measured.has(kindOfItem(item)))
    .flatMap((item) => {
      const row = drawnAs(record, item)
      return row ? [row] : []
    })
  if (rows.length === 0) return []
  const { percent, digits, digitOhms } = assumedInstrument
  return [
    { kind: "heading", level: 2, text: "Readings and what to expect" },
    {
      kind: "text",
      tone: "quiet",
      text:
        `Expected is length times ohms per metre of copper, with an assumed instrument error of ${percent} % and ${digits} ` +
        `digits of ${digitOhms} Ω, 0 to 30 °C, the paced length and two joints. Each bar has its own scale from nought.`,
    },
    {
      kind: "table",
      heads: ["Part", "Expected", "Reading", "It lies", "Drawn"],
      shares: [0.22, 0.18, 0.18, 0.18, 0.24],
      rows,
    },
  ]
}
