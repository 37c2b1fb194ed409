/** "What's left" and "what next": short answers out of the plan that name their item. */
import type { Item } from "../facts/Item"
import { sayItem } from "../interpret/sayItem"
import { openWarnings } from "../record/warningKey"
import { capital } from "./capital"
import { needsNothing, nextOf, whatsLeft } from "./plan"
import { sayMoreItems, sayOpenWarnings } from "./sayCounts"
import { sayAllWanted, sayWanted } from "./sayWanted"
import { askWaiting } from "./speak"
import type { Turn } from "./Turn"

/** How many items are named in one answer, and how many things of each: more than that nobody keeps in his head. */
const mostItems = 3
const mostThings = 3

/** Of a part that was asked after and wants nothing: never surveyed, or done with. */
const sayNothingLeft = (turn: Turn, item: Item): void => {
  const { record } = turn.state
  const name = capital(sayItem(item))
  if (needsNothing(record, item)) return turn.say(`${name}: no bond wanted, so nothing is left.`)
  turn.say(record.items.includes(item) ? `${name}: nothing is left to say.` : `Nothing yet for ${sayItem(item)}.`)
}

/** Everything of one item, or the start of everything; open warnings come first, what waits for a yes last. */
export const sayLeft = (turn: Turn, item: Item | undefined): void => {
  const { record, checked } = turn.state
  const isCurrent = (one: { item: Item }) => (one.item === turn.state.item ? 0 : 1)
  const all = whatsLeft(record, turn.plan).toSorted((a, b) => isCurrent(a) - isCurrent(b))
  const left = all.filter((one) => item === undefined || one.item === item)
  const open = openWarnings(record, checked.findings).filter((one) => item === undefined || one.item === item).length
  const most = item === undefined ? mostThings : Number.POSITIVE_INFINITY
  const parts = left.slice(0, mostItems).map((one) => sayAllWanted(one.item, one.wanted, most))
  if (item !== undefined && left.length === 0 && open === 0) sayNothingLeft(turn, item)
  else
    turn.say(
      [...sayOpenWarnings(open), ...parts, ...sayMoreItems(left.length, mostItems)].join(" ") ||
        "Nothing is left to say.",
    )
  askWaiting(turn)
}

/** One thing: the next in the usual order of work. */
export const sayNext = (turn: Turn): void => {
  const next = nextOf(turn.state.record, turn.state.item, turn.plan)
  if (!next) turn.say("Nothing is left to say.")
  else turn.say(`${capital(sayItem(next.item))}: ${sayWanted(next.item, next.wanted)}.`)
  askWaiting(turn)
}
