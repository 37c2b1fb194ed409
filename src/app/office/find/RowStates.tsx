/** How a job stands, in shapes and words. It repeats what was counted and says of no job that it is in order. */
import type { JobRow } from "../../../record/JobRow"
import { type Shape, State } from "../../parts/Mark"

interface Shown {
  shape: Shape
  words: string
}

const count = (number: number, one: string, many: string) => `${number} ${number === 1 ? one : many}`

/** What a list tells of a job; `damaged`: a file it was taken in from was cut or changed. */
export const rowStates = (row: JobRow, damaged: boolean): Shown[] => {
  const states: Shown[] = []
  const add = (isSo: boolean, shape: Shape, words: string) => {
    if (isSo) states.push({ shape, words })
  }
  add(row.stops > 0, "stop", count(row.stops, "stop open", "stops open"))
  add(row.warns > 0, "warn", count(row.warns, "warning open", "warnings open"))
  add(damaged, "warn", "file was cut or changed")
  add(row.awaiting > 0, "awaiting", count(row.awaiting, "waits for a yes", "wait for a yes"))
  add(row.unseen > 0, "fresh", `${row.unseen} nobody has said yes to`)
  add(row.kept > 0, "kept", `${row.kept} kept`)
  add(row.copyOf !== undefined, "note", "second copy")
  add(row.signedOff, "yes", "signed")
  return states
}

export const RowStates = ({ row, damaged }: { row: JobRow; damaged: boolean }) => {
  const states = rowStates(row, damaged)
  if (states.length === 0) return <span className="state">not signed</span>
  return states.map(({ shape, words }) => <State key={words} shape={shape} words={words} />)
}
