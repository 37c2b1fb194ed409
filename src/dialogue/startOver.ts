/** Takes back everything that was said of one item, after asking. The part itself stays, so that it can be said afresh. */
import type { Item } from "../facts/Item"
import { sayNumber } from "../facts/sayNumber"
import { sayItem } from "../interpret/sayItem"
import { capital } from "./capital"
import { askOwn } from "./ownQuestion"
import type { Turn } from "./Turn"
import { withdraw } from "./withdraw"

const standingOf = (turn: Turn, item: Item | null) =>
  turn.state.record.entries.filter(
    (held) => held.item === item && held.withdrawn === null && held.fact.kind !== "service",
  )

const count = (entries: number) => (entries === 1 ? "One value goes" : `${capital(sayNumber(entries))} values go`)

export const askStartOver = (turn: Turn, item: Item): void => {
  const standing = standingOf(turn, item)
  if (standing.length === 0) return turn.say(`Nothing yet for ${sayItem(item)}.`)
  askOwn(turn, "start_over", `${capital(sayItem(item))}. ${count(standing.length)}. Do you want that?`, item)
}

export const startOver = (turn: Turn): void => {
  const item = turn.state.question?.item ?? null
  const gone = withdraw(
    turn,
    standingOf(turn, item).map((held) => held.entry),
    "started_over",
  )
  turn.set({ question: null, doubt: null, item })
  turn.say(`Taken back: ${sayNumber(gone.length)}. ${item ? `${capital(sayItem(item))} is empty now.` : ""}`.trim())
}
