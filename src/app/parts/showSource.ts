/** Where a verdict comes from, in a line: standard, edition, clause, and how well the figure is known. */
import type { Source, Status } from "../../facts/Finding"

const known: Record<Status, string> = {
  direct: "published figure",
  derived: "worked out from published figures",
  memory: "from memory, so check the book",
}

/** "BS 7671, 2018+A2:2022, 544.1.1; published figure". What a source does not name is left out. */
export const showSource = (source: Source, status: Status): string => {
  const named = [source.standard, source.edition, source.clause].filter((one) => one !== "none" && one !== "")
  return `${named.join(", ")}; ${known[status]}`
}
