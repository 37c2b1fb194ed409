/**
 * The jobs that were found, as a table on a desk and as cards on a phone. Only the rows in sight are on the page, however
 * many there are; an empty row above and one below stand for the others. One job at a time can be reached by Tab; the
 * arrow keys go from job to job.
 */
import { useWindowVirtualizer } from "@tanstack/react-virtual"
import { type KeyboardEvent, type RefObject, useEffect, useLayoutEffect, useRef, useState } from "react"
import { showDate } from "../../../facts/showDate"
import type { JobRow } from "../../../record/JobRow"
import { officeHash } from "../officePlace"
import { RowStates } from "./RowStates"
import { showParts } from "./showParts"

interface JobTableProps {
  rows: readonly JobRow[]
  /** The job that was opened last, to begin at. */
  current: string | null
  /** Is given what takes the focus into the table. */
  enter: RefObject<() => void>
  faultsOf(job: string): readonly string[]
  opening(job: string): void
  /** The arrow key up from the first job. */
  leaveUp(): void
}

/** A row is about this high before it has been measured, in CSS pixels. */
const usualHeight = 72

/** Where each key goes from the row at `at`. */
const steps: Record<string, (at: number, last: number) => number> = {
  ArrowDown: (at) => at + 1,
  ArrowUp: (at) => at - 1,
  PageDown: (at) => at + 8,
  PageUp: (at) => Math.max(0, at - 8),
  Home: () => 0,
  End: (_, last) => last,
}

const useRows = ({ rows, current, enter, leaveUp }: JobTableProps) => {
  const table = useRef<HTMLTableElement>(null)
  const wanted = useRef(false)
  const [top, setTop] = useState(0)
  const [chosen, setChosen] = useState(() => rows.findIndex((row) => row.job === current))
  const at = Math.max(0, Math.min(chosen, rows.length - 1))
  const virtual = useWindowVirtualizer({
    count: rows.length,
    estimateSize: () => usualHeight,
    overscan: 6,
    scrollMargin: top,
    getItemKey: (index) => rows[index]!.job,
    // Coming back from a job, the list stands about where it was left.
    initialOffset: () => Math.max(0, chosen) * usualHeight,
  })
  const goTo = (next: number) => {
    if (next < 0) return leaveUp()
    const place = Math.min(next, rows.length - 1)
    wanted.current = true
    setChosen(place)
    virtual.scrollToIndex(place)
  }
  useLayoutEffect(() => {
    if (table.current) setTop(table.current.getBoundingClientRect().top + window.scrollY)
    enter.current = () => goTo(at)
  })
  // A row that was scrolled to is drawn a moment later; only then can it take the focus.
  useEffect(() => {
    const link = table.current?.querySelector<HTMLAnchorElement>(`[data-index="${at}"] a`)
    if (!wanted.current || !link) return
    wanted.current = false
    link.focus({ preventScroll: true })
  })
  return { table, at, goTo, setChosen, virtual, top }
}

interface RowProps {
  row: JobRow
  faults: readonly string[]
  reached: boolean
  opening(job: string): void
  focused(): void
}

const Cells = ({ row, faults, reached, opening, focused }: RowProps) => (
  <>
    <th scope="row">
      <a href={officeHash(row.job)} tabIndex={reached ? 0 : -1} onFocus={focused} onClick={() => opening(row.job)}>
        {row.place}
      </a>
    </th>
    <td className="find-day">
      <time dateTime={row.openedAt}>{showDate(row.openedAt.slice(0, 10))}</time>
    </td>
    <td>
      <span className="find-state">
        <RowStates row={row} damaged={faults.length > 0} />
      </span>
    </td>
    <td>
      <span className="find-parts">
        {[...(row.supply.arrangement ? [row.supply.arrangement] : []), ...showParts(row)].map((words) => (
          <span key={words}>{words}</span>
        ))}
      </span>
    </td>
  </>
)

/** As high as the rows that are not there. */
const Gap = ({ height }: { height: number }) =>
  height > 0 && (
    <tr className="find-gap" style={{ height }}>
      <td colSpan={4} />
    </tr>
  )

export const JobTable = (props: JobTableProps) => {
  const { rows, faultsOf, opening } = props
  const { table, at, goTo, setChosen, virtual, top } = useRows(props)
  const items = virtual.getVirtualItems()
  const press = (event: KeyboardEvent) => {
    const step = steps[event.key]
    if (!step || event.ctrlKey || event.metaKey || event.altKey) return
    event.preventDefault()
    goTo(step(at, rows.length - 1))
  }
  return (
    <table className="find-table" aria-label="Jobs found" aria-rowcount={rows.length + 1} ref={table} onKeyDown={press}>
      <thead>
        <tr>
          {["Place", "Day", "State", "Parts"].map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        <Gap height={(items[0]?.start ?? top) - top} />
        {items.map(({ index, key }) => {
          const row = rows[index]!
          return (
            <tr
              key={key}
              className="find-row"
              aria-rowindex={index + 2}
              data-index={index}
              ref={virtual.measureElement}
            >
              <Cells
                row={row}
                faults={faultsOf(row.job)}
                reached={index === at}
                opening={opening}
                focused={() => setChosen(index)}
              />
            </tr>
          )
        })}
        <Gap height={virtual.getTotalSize() - ((items.at(-1)?.end ?? top) - top)} />
      </tbody>
    </table>
  )
}
