/** Readings of all jobs that were found, one chart a size. */
import { useMemo } from "react"
import type { JobRow } from "../../../record/JobRow"
import { chartPoints } from "../../../search/chartPoints"
import { ReadingsChart } from "./ReadingsChart"
import "./charts.css"

export const ChartsView = ({ rows }: { rows: readonly JobRow[] }) => {
  const charts = useMemo(() => chartPoints(rows), [rows])
  if (charts.length === 0) return <p>None of these jobs has a bond with its size, its length and a reading.</p>
  return (
    <section className="charts" aria-label="Readings of the jobs found">
      <p className="quiet">
        The band is worked out: length times the most that copper of class 2 may measure (IEC 60228, 2004), from a cold
        to a warm building, with the usual error of a meter, which is an assumption. A point outside it is worth a look,
        and decides nothing.
      </p>
      <div className="charts-all">
        {charts.map((chart) => (
          <ReadingsChart key={chart.mm2} chart={chart} />
        ))}
      </div>
    </section>
  )
}
