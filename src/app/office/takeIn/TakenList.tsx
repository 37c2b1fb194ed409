/** What became of every file: what it was, what came of it, and what was wrong with it. Those with faults come first. */
import { Mark, type Shape } from "../../parts/Mark"
import { officeHash } from "../officePlace"
import type { TakenFile } from "./TakenFile"

const shapeOf = ({ job, faults, fresh }: TakenFile): Shape => {
  if (job === null) return "stop"
  if (faults.length > 0) return "warn"
  return fresh > 0 ? "yes" : "unchallenged"
}

const gravity: readonly Shape[] = ["stop", "warn", "yes", "unchallenged"]
const rank = (one: TakenFile) => gravity.indexOf(shapeOf(one))

/** Damaged files are named with the number of what was wrong, and the first few faults of it. */
const mostFaults = 4

const Faults = ({ faults }: { faults: readonly string[] }) =>
  faults.length > 0 && (
    <ul className="taken-faults">
      {faults.slice(0, mostFaults).map((fault) => (
        <li key={fault}>{fault}</li>
      ))}
      {faults.length > mostFaults && <li>And {faults.length - mostFaults} more.</li>}
    </ul>
  )

const lines = (number: number) => `${number} ${number === 1 ? "line" : "lines"}`

const Taken = ({ one }: { one: TakenFile }) => (
  <li className="taken-file">
    <Mark shape={shapeOf(one)} />
    <div>
      <p>
        {one.job === null ? <strong>{one.file}</strong> : <a href={officeHash(one.job)}>{one.file}</a>}{" "}
        <span className="quiet">{one.kind === "not known" ? "not taken in" : one.kind}</span>
      </p>
      <p>{one.words}</p>
      {one.job !== null && (
        <p className="quiet">
          {lines(one.fresh)} taken, {lines(one.known)} here already
        </p>
      )}
      <Faults faults={one.faults} />
    </div>
  </li>
)

/** "3 files: 1 taken in, 1 here already, 1 not taken in." */
export const sumUp = (taken: readonly TakenFile[]): string => {
  const counts = [
    [taken.filter((one) => one.job !== null && one.fresh > 0).length, "taken in"],
    [taken.filter((one) => one.job !== null && one.fresh === 0).length, "here already"],
    [taken.filter((one) => one.job === null).length, "not taken in"],
    [taken.filter((one) => one.faults.length > 0).length, "with faults"],
  ] as const
  const told = counts.filter(([count]) => count > 0).map(([count, what]) => `${count} ${what}`)
  return `${taken.length} ${taken.length === 1 ? "file" : "files"}: ${told.join(", ")}.`
}

export const TakenList = ({ taken }: { taken: readonly TakenFile[] }) => (
  // biome-ignore lint/a11y/noNoninteractiveTabindex: a list that scrolls has to be reached by the keyboard
  <section className="taken" aria-label="What became of each file" tabIndex={0}>
    <ul>
      {[...taken]
        .sort((a, b) => rank(a) - rank(b))
        .map((one) => (
          <Taken key={`${one.file} ${one.job ?? ""} ${one.words}`} one={one} />
        ))}
    </ul>
  </section>
)
