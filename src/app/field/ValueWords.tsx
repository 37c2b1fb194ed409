/** The words a value came from, or who put it in by hand and why. */
import type { Heard } from "../../facts/Heard"
import type { Held } from "../../record/JobRecord"
import { showClock } from "../parts/showMoment"

const engines: Partial<Record<string, string>> = { typed: "typed", transcript: "from a transcript" }

export const ValueWords = ({ held, heard }: { held: Held; heard: Readonly<Record<string, Heard>> }) => {
  const { origin } = held
  if (origin.by === "hand")
    return (
      <p className="value-words">
        By hand at {showClock(held.at)}: {origin.reason}
      </p>
    )
  return (
    <ul className="value-words">
      {origin.heard.map((id) => (
        <li key={id}>
          {heard[id] ? `“${heard[id].text}”` : "The words are not at hand here; the job file holds them."}{" "}
          <span className="quiet">
            {engines[heard[id]?.engine ?? ""] ?? "heard"}, {showClock(held.at)}
          </span>
        </li>
      ))}
    </ul>
  )
}
