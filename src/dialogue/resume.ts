/** Takes up a stored job again: the loop's state out of its log, and in a sentence or two where it was left. */
import { isBond } from "../facts/Item"
import { sayItem } from "../interpret/sayItem"
import { awaitingYes, heldStep } from "../record/holding"
import type { LogLine } from "../record/LogLine"
import { project } from "../record/project"
import { afterBreak } from "./cautions"
import { sayMinutes } from "./checkIns"
import { startChecks } from "./loneWorker"
import { nextOf } from "./plan"
import { sayFacts, withoutSubject } from "./sayFacts"
import { sayWanted } from "./sayWanted"
import { askWaiting } from "./speak"
import type { Turn } from "./Turn"

/** What was last on record and what comes next, in one sentence. */
const sayWhere = (turn: Turn): string => {
  const { record, item } = turn.state
  const last = record.entries.findLast((held) => held.withdrawn === null && held.fact.kind !== "service")
  const next = nextOf(record, item, turn.plan)
  if (!last) return "Nothing is on record yet."
  // A bare value is taken for the part that was named last, even where nothing was said of it yet.
  const at = item ?? last.item
  const where = at && at !== "job" ? `You were at ${sayItem(at)}` : "You had begun"
  const wasAt = last.item !== null && last.item !== at && isBond(last.item) ? `${sayItem(last.item)} ` : ""
  const words = sayFacts([withoutSubject(last.fact)]).replace(/[.]$/, "")
  const was = `${wasAt}${words.charAt(0).toLowerCase()}${words.slice(1)}`
  const then = next ? `next is ${sayItem(next.item)}, ${sayWanted(next.item, next.wanted)}` : "nothing is left"
  return `${where}: ${was} was last, ${then}.`
}

/** Says where the job was left, warns that what was dead may be live, and asks for what still waits. */
export const resume = (turn: Turn, lines: readonly LogLine[]): void => {
  const record = project(lines)
  const item = record.entries.findLast((held) => held.item !== null && held.withdrawn === null)?.item ?? null
  const isPart = item !== "supply" && item !== "test_leads" && item !== "job" && item !== "met"
  turn.set({ job: record.job, record, item: isPart ? item : null })
  turn.check()
  const every = record.checkEveryMinutes
  if (every !== null) turn.set({ loneWorker: startChecks(every, turn.at) })
  const signed = record.signedOff ? " It is signed off." : ""
  const checked = every === null ? "" : ` I ask after you every ${sayMinutes(every)}, as before.`
  turn.say(`Taken up again. ${record.place}. ${sayWhere(turn)}${signed}${checked}`)
  const isBreak = lines.at(-1)?.type === "put_away"
  if (isBreak && heldStep(record, "supply", "isolated_proved_dead")) turn.say(afterBreak)
  if (awaitingYes(record).length > 0) askWaiting(turn, "Still open.")
}
