/** What stands in the fields of a panel at the desk, as the change that it means. */
import { done, type Outcome, refuse } from "../../../facts/Outcome"
import { warningKey } from "../../../record/warningKey"
import type { Change } from "../../../review/Change"
import type { Point } from "../../../review/Point"
import { type Draft, parseDraft } from "../../parts/changeDraft"

/** The ways to work on a point, as buttons and keys name them. */
export type Panel = "value" | "sentence" | "withdraw" | "keep" | "strike"

export interface Filled {
  draft: Draft | null
  text: string
}

/** The utterance that a point's value came from last, or that a question was about. */
export const sentenceOf = ({ held, heard }: Point): string | null =>
  held?.origin.by === "voice" ? (held.origin.heard.at(-1) ?? null) : (heard ?? null)

/** A step is done or not, and a part is its name: both can only be taken back. */
const hasField = ({ held }: Point): boolean =>
  held !== null && held.fact.kind !== "step_done" && held.fact.kind !== "service"

/** The ways that this point has. */
export const panelsOf = (point: Point): Panel[] => [
  ...(hasField(point) ? (["value"] as const) : []),
  ...(sentenceOf(point) ? (["sentence"] as const) : []),
  ...(point.finding && point.kind !== "kept" ? (["keep"] as const) : []),
  ...(point.held && point.held.withdrawn === null ? (["withdraw"] as const) : []),
  ...(sentenceOf(point) ? (["strike"] as const) : []),
]

/** The change, or why what was filled in is none. */
export const changeOf = (panel: Panel, point: Point, { draft, text }: Filled): Outcome<Change> => {
  const { held, finding } = point
  if (panel === "value" && held && draft) {
    const fact = parseDraft(held.fact, draft)
    return fact.ok ? done({ do: "value", fact: fact.value }) : fact
  }
  if (panel === "sentence") {
    const plain = text.trim()
    return plain ? done({ do: "sentence", heard: sentenceOf(point), text: plain }) : refuse("Type the sentence.")
  }
  if (panel === "withdraw" && held) return done({ do: "withdraw", entry: held.entry })
  if (panel === "keep" && finding) return done({ do: "keep", warning: warningKey(finding) })
  return refuse("There is nothing to change here.")
}
