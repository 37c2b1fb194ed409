/** Where a verdict comes from, in a line: standard, edition, clause, and how well the figure is known. */
import type { Source, Status } from "../../facts/Finding"

const known: Record<Status, string> = {
  direct: "published figure",
  derived: "worked out from published figures",
  memory: "from memory, so check the book",
}

/** "BS 7671:2018+A2:2022, 544.1.1; published figure". */
export const showSource = (source: Source, status: Status): string =>
  `${source.standard}:${source.edition}, ${source.clause}; ${known[status]}`
