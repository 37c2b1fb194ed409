/** The parts of a job and their values in a few words, for one line of the list. */
import type { JobRow, PartRow } from "../../../record/JobRow"
import { showFact } from "../../parts/showFact"
import { showItem } from "../../parts/showItem"

/** The leads are no part that anybody looks for in a list. */
const isShown = (part: PartRow) => part.item !== "test_leads"

const showReading = ({ ohms, limit }: PartRow): string[] =>
  ohms === undefined
    ? []
    : [showFact({ kind: "resistance", value: ohms, unit: "ohm", ...(limit && { qualifier: limit }) }).value]

/** "Gas 10 mm², 0.02 Ω", one a part. */
export const showParts = (row: JobRow): string[] =>
  row.parts.filter(isShown).map((part) => {
    const values = [...(part.mm2 === undefined ? [] : [`${part.mm2} mm²`]), ...showReading(part)]
    return [showItem(part.item), values.join(", ")].filter((words) => words !== "").join(" ")
  })
