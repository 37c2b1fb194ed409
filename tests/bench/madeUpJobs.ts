/**
 * Invented jobs for measuring with: the real loop is played over seeded talk at bakeries and village halls, and what it
 * logged is handed out again under other places and days. No people are in it.
 */
import { seededRandom } from "../../src/cli/grammarTools"
import { runLoop } from "../../src/dialogue/runLoop"
import type { Heard } from "../../src/facts/Heard"
import type { JobRow } from "../../src/record/JobRow"
import type { LogLine } from "../../src/record/LogLine"
import { makeRow } from "../../src/search/makeRow"
import { realTools } from "../realTools"

/** A log and its row, with `@` wherever the number of the job belongs. */
export interface Template {
  lines: LogLine[]
  row: JobRow
}

const parts = ["water", "gas", "oil", "structural steel", "heating", "lightning protection", "flour silo frame"]
const sizes = ["four", "six", "ten", "ten", "ten", "sixteen"]
const notes = [
  "stop valve is stiff",
  "no room behind the oven",
  "old clamp under the stage",
  "pipe painted over",
  "meter box door is loose",
  "copper strap in the boiler house",
]

type Pick = <T>(from: readonly T[]) => T

const talkOfPart = (part: string, pick: Pick, random: () => number): string[] => [
  `${part} ${pick(sizes)} square ${2 + Math.floor(random() * 40)} metres`,
  "yes",
  "pipe cleaned",
  "clamp fitted",
  `${100 + 50 * Math.floor(random() * 14)} millimetres from the meter`,
  "label fitted",
  "one end disconnected",
  `nought point nought ${pick(["one", "two", "three", "four", "five", "six", "seven", "nine"])} ohms`,
  random() < 0.9 ? "yes" : "what's left",
  random() < 0.4 ? "keep it because the run is longer than it looks" : "carry on",
  "connected at the terminal",
  `note ${pick(notes)}`,
]

const talk = (pick: Pick, random: () => number): string[] => {
  const chosen = parts.filter(() => random() < 0.7)
  return [
    pick(["PME", "TN-S", "TT supply"]),
    "supply neutral twenty five square",
    "isolated and proved dead",
    "leads nulled",
    "earthing conductor sixteen square three metres",
    ...chosen.flatMap((part) => talkOfPart(part, pick, random)),
    "read it all back",
  ]
}

const toHeard = (text: string, at: number): Heard => ({
  id: `h@-${at}`,
  text,
  alternatives: [],
  words: [],
  start: at * 6,
  end: at * 6 + 3,
  engine: "offline",
  margin: 1.4,
})

/** Talks until there are about `wanted` lines, then stops where it is. */
const makeTemplate = (number: number, wanted: number): Template => {
  const random = seededRandom(number + 1)
  const pick: Pick = (from) => from[Math.floor(random() * from.length)]!
  const tools = realTools()
  let count = 0
  const said = [...talk(pick, random), ...talk(pick, random), ...talk(pick, random)].map(toHeard)
  const start = { job: "job-@", place: "@place", pack: "uk-bs7671", device: "tablet", startMs: Date.UTC(2026, 0, 5, 9) }
  const { lines } = runLoop(said, start, { ...tools, newId: () => `l@-${count++}` })
  const kept = lines.slice(0, wanted)
  return { lines: kept, row: makeRow(kept, tools.check)! }
}

export const makeTemplates = (count: number, lines: number): Template[] =>
  Array.from({ length: count }, (_, number) => makeTemplate(number, lines))

const kinds = [
  "Bakery with the flat above",
  "Village hall",
  "Village hall, kitchen end",
  "Bakery, ovens and stores",
  "Corner bakery",
  "Hall by the green",
]
const lanes = ["Mill Lane", "Church Row", "Station Road", "The Green", "Quay Side", "Orchard Way", "Lime Kiln Hill"]

/** The same number gives the same place and day. */
export const placeOf = (number: number) => {
  const random = seededRandom(number + 77)
  const pick: Pick = (from) => from[Math.floor(random() * from.length)]!
  return {
    place: `${pick(kinds)}, ${1 + Math.floor(random() * 240)} ${pick(lanes)}`,
    dayShift: Math.floor(random() * 700),
  }
}
