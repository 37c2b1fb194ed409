/** Readings over length for one size, with the band a good conductor lies in; the same as a table for who cannot see it. */
import type { ChartPoint, Lies, SizeChart } from "../../../search/chartPoints"
import { showOhms } from "../../parts/showFact"
import { showItem } from "../../parts/showItem"
import { officeHash } from "../officePlace"

const [width, height] = [560, 300]
const [left, bottom, top, right] = [64, 40, 14, 16]
/** Points drawn at most; of more, those outside the band are all drawn and the others evenly thinned. */
const mostPoints = 1500
/** Rows of the table at most: what is outside the band comes first. */
const mostRows = 200

const words: Record<Lies, string> = { over: "over the band", under: "under the band", in: "in the band" }
const gravity: readonly Lies[] = ["over", "under", "in"]
const shapes: Record<Lies, string> = {
  in: "M-3 0a3 3 0 1 0 6 0a3 3 0 1 0-6 0Z",
  over: "M0-6 5.5 4.5h-11Z",
  under: "M0 6 5.5-4.5h-11Z",
}

const thinned = (points: readonly ChartPoint[]): ChartPoint[] => {
  const step = Math.ceil(points.length / mostPoints)
  const drawn = points.filter((point, at) => point.lies !== "in" || at % step === 0)
  return drawn.sort((a, b) => gravity.indexOf(b.lies) - gravity.indexOf(a.lies))
}

const round = (number: number) => Math.round(number * 10) / 10
/** Four or five even steps up to the end of a scale. */
const ticks = (end: number): number[] => {
  const rough = end / 4
  const power = 10 ** Math.floor(Math.log10(rough))
  const step = [1, 2, 5, 10].map((by) => by * power).find((one) => one >= rough) ?? rough
  return Array.from({ length: Math.floor(end / step) + 1 }, (_, at) => Number((at * step).toPrecision(6)))
}

const Axes = ({ chart, x, y }: { chart: SizeChart; x(m: number): number; y(ohms: number): number }) => (
  <g className="chart-axes">
    {ticks(chart.topOhms).map((ohms) => (
      <g key={`y${ohms}`}>
        <path d={`M${left} ${y(ohms)}H${width - right}`} />
        <text x={left - 8} y={y(ohms) + 4} textAnchor="end">
          {ohms}
        </text>
      </g>
    ))}
    {ticks(chart.longestM).map((m) => (
      <text key={`x${m}`} x={x(m)} y={height - bottom + 20} textAnchor="middle">
        {m}
      </text>
    ))}
    <text x={width - right} y={height - 4} textAnchor="end">
      length in m
    </text>
    <text x={4} y={top + 2}>
      Ω
    </text>
  </g>
)

const Picture = ({ chart, titled }: { chart: SizeChart; titled: string }) => {
  const x = (m: number) => round(left + (m / chart.longestM) * (width - left - right))
  const y = (ohms: number) =>
    round(height - bottom - (Math.min(ohms, chart.topOhms) / chart.topOhms) * (height - bottom - top))
  const along = (of: "low" | "high" | "nominal") => chart.band.map((at) => `${x(at.lengthM)} ${y(at[of])}`)
  const band = `M${[...along("high"), ...along("low").reverse()].join("L")}Z`
  return (
    <svg className="chart" viewBox={`0 0 ${width} ${height}`} role="img" aria-labelledby={titled}>
      <title id={titled}>{`Readings over length, ${chart.mm2} mm²`}</title>
      <path className="chart-band" d={band} />
      <Axes chart={chart} x={x} y={y} />
      <path className="chart-nominal" d={`M${along("nominal").join("L")}`} />
      {thinned(chart.points).map((point) => (
        <path
          key={`${point.job} ${point.item}`}
          className={`chart-${point.lies}`}
          d={shapes[point.lies]}
          transform={`translate(${x(point.lengthM)} ${y(point.ohms)})`}
        />
      ))}
    </svg>
  )
}

const Table = ({ chart }: { chart: SizeChart }) => {
  const sorted = [...chart.points].sort((a, b) => gravity.indexOf(a.lies) - gravity.indexOf(b.lies) || b.ohms - a.ohms)
  return (
    <details>
      <summary>The same as a table, outside the band first</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls has to be reached by the keyboard */}
      <section className="chart-table" aria-label={`Readings of ${chart.mm2} mm²`} tabIndex={0}>
        <table>
          <thead>
            <tr>
              {["Job", "Part", "Length", "Reading", "Lies"].map((head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {sorted.slice(0, mostRows).map((point) => (
              <tr key={`${point.job} ${point.item}`}>
                <td>
                  <a href={officeHash(point.job)}>{point.place}</a>
                </td>
                <td>{showItem(point.item)}</td>
                <td>{point.lengthM} m</td>
                <td>{showOhms(point.ohms)}</td>
                <td>{words[point.lies]}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {sorted.length > mostRows && <p>The other {sorted.length - mostRows} lie in the band or nearer to it.</p>}
    </details>
  )
}

export const ReadingsChart = ({ chart }: { chart: SizeChart }) => {
  const count = (lies: Lies) => chart.points.filter((point) => point.lies === lies).length
  const titled = `chart-${chart.mm2}`
  return (
    <figure className="chart-figure">
      <figcaption>
        <strong>{chart.mm2} mm² copper</strong>, {chart.points.length} readings: {count("in")} in the band,{" "}
        {count("over")} over it, {count("under")} under it.
        {chart.beyond > 0 && ` ${chart.beyond} lie beyond the scale and are drawn at its top.`}
      </figcaption>
      <Picture chart={chart} titled={titled} />
      <Table chart={chart} />
    </figure>
  )
}
