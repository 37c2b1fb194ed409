/**
 * The list of what needs eyes, under a heading for each kind. One row has the focus; arrows, j and k move it, and the
 * detail beside it follows.
 */
import { Fragment } from "react"
import type { Point, PointKind } from "../../../review/Point"
import { Mark } from "../../parts/Mark"
import { deskState, pointHeads, pointName, pointValue, pointWhy } from "./pointWords"

interface ListProps {
  points: readonly Point[]
  chosen: string | null
  choose: (key: string) => void
  open: (key: string) => void
}

/** Kinds whose heading says what became of the value already. */
const saidByHead: readonly PointKind[] = ["waiting", "unchallenged", "unseen"]

export const rowId = (key: string): string => `row-${key.replace(/[^\w-]+/g, "-")}`

const Row = ({
  point,
  chosen,
  choose,
  open,
}: { point: Point; chosen: boolean } & Pick<ListProps, "choose" | "open">) => {
  const state = point.held && !saidByHead.includes(point.kind) ? deskState(point.held) : null
  const why = pointWhy(point)
  return (
    <li>
      <button
        type="button"
        id={rowId(point.key)}
        className="point-row"
        aria-current={chosen ? "true" : undefined}
        tabIndex={chosen ? 0 : -1}
        onFocus={() => choose(point.key)}
        onClick={() => open(point.key)}
      >
        <span className="point-name">{pointName(point)}</span>
        <span className="point-value">{pointValue(point)}</span>
        {why && <span className="point-why">{why}</span>}
        {state && (
          <span className="point-state">
            <Mark shape={state.shape} />
            {state.words}
          </span>
        )}
      </button>
    </li>
  )
}

export const PointList = ({ points, chosen, choose, open }: ListProps) => {
  const kinds = [...new Set(points.map((point) => point.kind))]
  return (
    <nav className="points" aria-label="What needs eyes">
      {kinds.map((kind) => {
        const { shape, words } = pointHeads[kind]
        const own = points.filter((point) => point.kind === kind)
        return (
          <Fragment key={kind}>
            <h2 className={`points-head points-${kind}`} id={`points-${kind}`}>
              <Mark shape={shape} />
              <span>{words}</span>
              <span className="points-count">{own.length}</span>
            </h2>
            <ul aria-labelledby={`points-${kind}`}>
              {own.map((point) => (
                <Row key={point.key} point={point} chosen={point.key === chosen} choose={choose} open={open} />
              ))}
            </ul>
          </Fragment>
        )
      })}
    </nav>
  )
}
