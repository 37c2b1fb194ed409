/** Reads the record aloud, page by page, so that it can be ended between two pages. */
import type { Item } from "../facts/Item"
import { sayItem } from "../interpret/sayItem"
import { allHeld } from "../record/holding"
import type { Held } from "../record/JobRecord"
import { askOwn } from "./ownQuestion"
import { sayFacts } from "./sayFacts"
import { askWaiting } from "./speak"
import type { Turn } from "./Turn"

/** Facts in one sentence, and sentences before the worker is asked whether to go on. Nobody keeps more in his head. */
const factsAtOnce = 6
const sentencesAtOnce = 3

const chunks = <T>(list: readonly T[], size: number): T[][] =>
  Array.from({ length: Math.ceil(list.length / size) }, (_, at) => list.slice(at * size, (at + 1) * size))

const sentencesOf = (held: readonly Held[]): string[] =>
  chunks(held, factsAtOnce).map((some) => sayFacts(some.map((one) => one.fact)))

const valuesOf = (turn: Turn) => allHeld(turn.state.record).filter((one) => one.fact.kind !== "service")

/** The next sentences; asks whether to go on when there are more. */
export const readOn = (turn: Turn): void => {
  const { pages } = turn.state
  if (pages.length === 0) return turn.say("There is nothing more to read.")
  for (const sentence of pages.slice(0, sentencesAtOnce)) turn.say(sentence)
  const rest = pages.slice(sentencesAtOnce)
  turn.set({ pages: rest, question: null })
  if (rest.length > 0) askOwn(turn, "read_on", "There is more. Shall I?")
  // A yes after the last page would meet nothing, and what was read may still wait for one.
  else askWaiting(turn)
}

/** Ends a read-back where it is. */
export const stopReading = (turn: Turn): void => {
  const isReading = turn.state.pages.length > 0
  turn.set({ pages: [], ...(turn.state.question?.kind === "read_on" && { question: null }) })
  turn.say(isReading ? "Left there." : "I am not reading anything.")
}

/** Begins to read everything that holds, item by item, what belongs to the job itself last. */
export const readAll = (turn: Turn): void => {
  const held = valuesOf(turn)
  if (held.length === 0) return turn.say("Nothing is on record yet.")
  const items = [...turn.state.record.items, "job"]
  turn.set({ pages: items.flatMap((item) => sentencesOf(held.filter((one) => one.item === item))) })
  readOn(turn)
}

/** Everything that holds for one item. */
export const readItem = (turn: Turn, item: Item): void => {
  const held = valuesOf(turn).filter((one) => one.item === item)
  if (held.length === 0) return turn.say(`Nothing yet for ${sayItem(item)}.`)
  turn.set({ pages: sentencesOf(held) })
  readOn(turn)
}
