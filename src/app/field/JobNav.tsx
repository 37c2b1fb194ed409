/** The way between the screens of a job: at the thumb on a phone, at the head where picture and record stand beside. */

import type { Screen } from "../../facts/Interpretation"
import { openWarnings } from "../../record/warningKey"
import { Icon, type IconName } from "../parts/Icon"
import type { SessionView } from "../Session"

const places: readonly (readonly [screen: Screen, words: string, icon: IconName])[] = [
  ["now", "Now", "ear"],
  ["picture", "Picture", "picture"],
  ["record", "Record", "all"],
  ["findings", "Findings", "findings"],
  ["sign-off", "Sign off", "sign"],
]

const OpenCount = ({ count }: { count: number }) =>
  count === 0 ? null : (
    <span className="nav-count">
      {count}
      <span className="unseen"> open</span>
    </span>
  )

export const JobNav = ({ view, screen }: { view: SessionView; screen: Screen }) => {
  const { record, checked } = view.dialogue
  const open = openWarnings(record, checked.findings).length
  return (
    <nav className="job-nav" aria-label="Screens of this job">
      {places.map(([name, words, icon]) => (
        <a key={name} className={`nav-${name}`} href={`#${name}`} aria-current={name === screen ? "page" : undefined}>
          <Icon name={icon} />
          <span>{words}</span>
          {name === "findings" && <OpenCount count={open} />}
        </a>
      ))}
    </nav>
  )
}
