/** Wishes that write nothing: what is left, read it all back, what size, what should it read, stop and start listening. */
import type { Command } from "../facts/Interpretation"
import type { Item } from "../facts/Item"
import type { Situation } from "../facts/Situation"
import { sayNumber } from "../facts/sayNumber"
import { sayItem } from "../interpret/sayItem"
import { sayKind } from "../interpret/sayKind"
import { sayStep } from "../interpret/sayStep"
import { allHeld, awaitingYes } from "../record/holding"
import { assumedInstrument, toSituation } from "../record/toSituation"
import { openWarnings } from "../record/warningKey"
import { expectedOhms } from "../rules/expectedOhms"
import { leastMainBondMm2 } from "../rules/leastMainBondMm2"
import { longestRunM } from "../rules/longestRunM"
import { capital } from "./capital"
import { keepWarning } from "./keepWarning"
import { type Wanted, whatsLeft } from "./plan"
import { sayFacts } from "./sayFacts"
import { askWaiting } from "./speak"
import type { Turn } from "./Turn"

/** How many parts are named in one answer: more than that nobody keeps in their head. */
const mostParts = 3

const sayWanted = (wanted: Wanted): string =>
  wanted.startsWith("step:") ? sayStep(wanted.slice(5) as never) : sayKind(wanted)

const sayLeft = (turn: Turn, item: Item | undefined): void => {
  const { record, checked } = turn.state
  if (item && !record.items.includes(item)) return turn.say(`Nothing yet for ${sayItem(item)}.`)
  const isCurrent = (one: { item: Item }) => (one.item === turn.state.item ? 0 : 1)
  const left = whatsLeft(record)
    .filter((one) => item === undefined || one.item === item)
    .toSorted((a, b) => isCurrent(a) - isCurrent(b))
  const open = openWarnings(record, checked.findings).length
  const parts = left
    .slice(0, mostParts)
    .map((one) => `${capital(sayItem(one.item))}: ${one.wanted.map(sayWanted).join(", ")}.`)
  const more = left.length > mostParts ? [`And ${sayNumber(left.length - mostParts)} more on the screen.`] : []
  const warned =
    open > 0 && item === undefined ? [`${capital(sayNumber(open))} open ${open === 1 ? "warning" : "warnings"}.`] : []
  const nothing = left.length === 0 && warned.length === 0 ? ["Nothing is left to say."] : []
  turn.say([...warned, ...parts, ...more, ...nothing].join(" "))
  if (awaitingYes(record).length > 0) askWaiting(turn)
}

const readAll = (turn: Turn): void => {
  const held = allHeld(turn.state.record).filter((one) => one.fact.kind !== "service")
  if (held.length === 0) turn.say("Nothing is on record yet.")
  for (const item of turn.state.record.items) {
    const facts = held.filter((one) => one.item === item).map((one) => one.fact)
    if (facts.length > 0) turn.say(sayFacts(facts))
  }
  const loose = held.filter((one) => one.item === "job").map((one) => one.fact)
  if (loose.length > 0) turn.say(sayFacts(loose))
}

const readItem = (turn: Turn, item: Item): void => {
  const facts = allHeld(turn.state.record)
    .filter((one) => one.item === item && one.fact.kind !== "service")
    .map((one) => one.fact)
  turn.say(facts.length > 0 ? sayFacts(facts) : `Nothing yet for ${sayItem(item)}.`)
}

const sayLeastSize = (turn: Turn, item: Item, situation: Situation): void => {
  const name = capital(sayItem(item))
  const { arrangement, neutralMm2 } = situation.supply
  const earthing = situation.items.find((one) => one.item === "earthing_conductor")?.csaMm2
  if (item === "earthing_conductor")
    return turn.say(`${name}. Work it out from the line conductor or the fault. I can't size that one yet.`)
  if (!arrangement) return turn.say("Tell me the earthing arrangement first.")
  const least = leastMainBondMm2({
    arrangement: arrangement.value,
    neutralMm2: neutralMm2?.value,
    earthingMm2: earthing?.value,
  })
  if (least === null) {
    const need = arrangement.value === "TN-C-S" ? "the supply neutral size" : "the earthing conductor size"
    return turn.say(`Tell me ${need} first.`)
  }
  turn.say(
    `${name}. At least ${sayNumber(least)} square copper, by the book I follow. The network operator may want more.`,
  )
}

const sayExpected = (turn: Turn, item: Item, situation: Situation): void => {
  const part = situation.items.find((one) => one.item === item)
  const name = capital(sayItem(item))
  if (!part?.csaMm2 || !part.lengthM) return turn.say(`${name}. Tell me its size and length first.`)
  const band = expectedOhms({ csaMm2: part.csaMm2.value, lengthM: part.lengthM.value, instrument: assumedInstrument })
  if (!band.ok) return turn.say(`${name}. ${band.because}`)
  const { nominal, low, high } = band.value
  const rounded = (ohms: number) => sayNumber(Math.round(ohms * 100) / 100, 2)
  turn.say(`${name}. It should show near ${rounded(nominal)}. From ${rounded(low)} to ${rounded(high)} would fit.`)
}

/** The length that would give the reading on record: a way to see whether a reading fits the run. */
const sayLongest = (turn: Turn, item: Item, situation: Situation): void => {
  const part = situation.items.find((one) => one.item === item)
  const name = capital(sayItem(item))
  const ohms = part?.reading?.ohms
  if (!part?.csaMm2 || ohms == null) return turn.say(`${name}. Tell me its size and reading first.`)
  const run = longestRunM({ csaMm2: part.csaMm2.value }, ohms)
  if (!run.ok) return turn.say(`${name}. ${run.because}`)
  const size = sayNumber(part.csaMm2.value)
  turn.say(`${name}. That reading fits near ${sayNumber(Math.round(run.value))} metres of ${size} square.`)
}

const forItem = (turn: Turn, subject: Item | undefined, say: (item: Item, situation: Situation) => void): void => {
  const item = subject ?? turn.state.item
  if (!item) return turn.say("Which part? Name it and ask again.")
  say(item, toSituation(turn.state.record))
}

/** Carries out one wish. Nothing but what is said, and whether the app listens, changes. */
export const carryOut = (turn: Turn, command: Command): void => {
  switch (command.kind) {
    case "whats_left":
      return sayLeft(turn, command.subject)
    case "read_all_back":
      return readAll(turn)
    case "what_size":
      return forItem(turn, command.subject, (item, situation) => sayLeastSize(turn, item, situation))
    case "what_should_it_read":
      return forItem(turn, command.subject, (item, situation) => sayExpected(turn, item, situation))
    case "how_long":
      return forItem(turn, command.subject, (item, situation) => sayLongest(turn, item, situation))
    case "what_did_i_say":
      return forItem(turn, command.subject, (item) => readItem(turn, item))
    case "keep_it":
      return keepWarning(turn, command.reason)
    case "stop_listening":
      turn.set({ listening: false, question: null })
      return turn.say("I stopped taking notes. Say start listening when you want me.")
    case "start_listening":
      turn.set({ listening: true })
      return turn.say("Listening.")
  }
}
