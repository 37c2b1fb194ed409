/**
 * Whether a job's row meets a condition. A reading that was said with a limit meets it only where it must: "less than
 * 0.1" is not over 0.05, as it may be less.
 */
import { isBond } from "../facts/Item"
import type { JobRow, PartRow } from "../record/JobRow"
import type { Condition, JobState, PartField, Sign, Whose } from "./Condition"

/** Words are looked up in an index and not here. */
export type RowCondition = Exclude<Condition, { kind: "words" }>

const isWhose = (part: PartRow, whose: Whose) =>
  "item" in whose ? part.item === whose.item : whose.any === "part" || isMainBond(part)

/** The earthing conductor and the leads are parts of a job, and are no bonds. */
const isMainBond = (part: PartRow) => isBond(part.item) && part.item !== "electrode"

const compare = (value: number, sign: Sign, to: number): boolean => {
  if (sign === "<") return value < to
  if (sign === "<=") return value <= to
  if (sign === "=") return value === to
  return sign === ">=" ? value >= to : value > to
}

const fields = { size: "mm2", length: "lengthM", clamp: "clampMm", reading: "ohms" } as const

const readingIs = ({ ohms, limit }: PartRow, sign: Sign, to: number): boolean => {
  if (ohms === undefined) return false
  const asksOver = sign === ">" || sign === ">="
  if (ohms === null) return asksOver
  if (limit === ">") return asksOver && ohms >= to
  if (limit) return (sign === "<" && (limit === "<" ? ohms <= to : ohms < to)) || (sign === "<=" && ohms <= to)
  return compare(ohms, sign, to)
}

const valueIs = (part: PartRow, field: PartField, sign: Sign, to: number): boolean => {
  if (field === "reading") return readingIs(part, sign, to)
  const value = part[fields[field]]
  return typeof value === "number" && compare(value, sign, to)
}

const isIn = (row: JobRow, state: JobState): boolean => {
  switch (state) {
    case "stop":
      return row.stops > 0
    case "warn":
      return row.warns > 0
    case "open":
      return row.stops + row.warns > 0
    case "kept":
      return row.kept > 0
    case "awaiting":
      return row.awaiting > 0
    case "unseen":
      return row.unseen > 0
    case "signed":
      return row.signedOff
    case "copy":
      return row.copyOf !== undefined
  }
}

const touches = (row: JobRow, from: string | null, to: string | null) =>
  (from === null || row.lastAt.slice(0, 10) >= from) && (to === null || row.openedAt.slice(0, 10) <= to)

export const matches = (row: JobRow, condition: RowCondition): boolean => {
  switch (condition.kind) {
    case "days":
      return touches(row, condition.from, condition.to)
    case "value": {
      const { whose, field, sign, value } = condition
      return row.parts.some((part) => isWhose(part, whose) && valueIs(part, field, sign, value))
    }
    case "recorded": {
      const { whose, field, not } = condition
      return row.parts.some((part) => isWhose(part, whose) && (part[fields[field]] === undefined) === not)
    }
    case "overRange":
      return row.parts.some(
        (part) =>
          isWhose(part, condition.whose) && (part.ohms === null || (part.limit === ">" && part.ohms !== undefined)),
      )
    case "has":
      return row.parts.some((part) => part.item === condition.item) !== condition.not
    case "supply":
      return row.supply.arrangement === condition.arrangement
    case "state":
      return isIn(row, condition.state) !== condition.not
  }
}
