/** Questions about figures: what size it should be, what it should read, how long it can be. They write nothing. */
import type { Item } from "../facts/Item"
import type { Situation } from "../facts/Situation"
import { sayNumber } from "../facts/sayNumber"
import { sayItem } from "../interpret/sayItem"
import { assumedInstrument } from "../record/toSituation"
import { expectedOhms } from "../rules/expectedOhms"
import { leastEarthingConductorMm2 } from "../rules/leastEarthingConductorMm2"
import { leastMainBondMm2 } from "../rules/leastMainBondMm2"
import { longestRunM } from "../rules/longestRunM"
import { capital } from "./capital"
import type { Turn } from "./Turn"

/** By the table, for tails that are taken to be as big as the neutral: which is said, since nobody asked the line. */
const sayLeastEarthing = (turn: Turn, { supply }: Situation): void => {
  const neutralMm2 = supply.neutralMm2?.value
  if (!neutralMm2) return turn.say("Earthing conductor. Tell me the supply neutral size first.")
  const pmeNeutralMm2 = supply.arrangement?.value === "TN-C-S" ? neutralMm2 : undefined
  const least = leastEarthingConductorMm2({ lineMm2: neutralMm2, pmeNeutralMm2 })
  if (!least.ok) return turn.say(`Earthing conductor. ${least.because}`)
  const tails = `With tails of ${sayNumber(neutralMm2)} square`
  turn.say(
    `Earthing conductor. ${tails}, at least ${sayNumber(least.value.leastMm2)} square copper by the table. In the ground it may be more.`,
  )
}

/** The least size by the book, or what has to be told first. */
export const sayLeastSize = (turn: Turn, item: Item, situation: Situation): void => {
  const name = capital(sayItem(item))
  const { arrangement, neutralMm2 } = situation.supply
  const earthing = situation.items.find((one) => one.item === "earthing_conductor")?.csaMm2
  if (item === "earthing_conductor") return sayLeastEarthing(turn, situation)
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

/** What the meter should show for the size and length on record. */
export const sayExpected = (turn: Turn, item: Item, situation: Situation): void => {
  const part = situation.items.find((one) => one.item === item)
  const name = capital(sayItem(item))
  if (!part?.csaMm2 || !part.lengthM) return turn.say(`${name}. Tell me its size and length first.`)
  const band = expectedOhms({ csaMm2: part.csaMm2.value, lengthM: part.lengthM.value, instrument: assumedInstrument })
  if (!band.ok) return turn.say(`${name}. ${band.because}`)
  const { nominal, low, high } = band.value
  const rounded = (ohms: number) => sayNumber(Math.round(ohms * 100) / 100, 2)
  const fits = low < 0.005 ? `Anything up to ${rounded(high)}` : `From ${rounded(low)} to ${rounded(high)}`
  const near = nominal < 0.005 ? `under ${rounded(0.01)}` : `near ${rounded(nominal)}`
  turn.say(`${name}. It should show ${near}. ${fits} would fit.`)
}

/** A reading that much guidance takes for a whole bond; it is no limit, and the answer says so. */
const guideOhms = 0.05

/** The length on record, the length at which the guide figure is reached, and the one that the reading would fit. */
export const sayLongest = (turn: Turn, item: Item, situation: Situation): void => {
  const part = situation.items.find((one) => one.item === item)
  const name = capital(sayItem(item))
  const onRecord = part?.lengthM ? [`${capital(sayNumber(part.lengthM.value))} metres on record.`] : []
  const csaMm2 = part?.csaMm2?.value
  const size = csaMm2 && sayNumber(csaMm2)
  const metres = (ohms: number): string | null => {
    const run = csaMm2 ? longestRunM({ csaMm2 }, ohms) : null
    return run?.ok ? sayNumber(Math.round(run.value)) : null
  }
  const most = metres(guideOhms)
  const guide = most
    ? [`${capital(String(size))} square comes to ${sayNumber(guideOhms)} ohms near ${most} metres. A guide, no limit.`]
    : ["Tell me its size, and I say how far it goes."]
  const ohms = part?.reading?.ohms
  const fits = ohms == null ? null : metres(ohms)
  turn.say([`${name}.`, ...onRecord, ...guide, ...(fits ? [`Its reading fits near ${fits} metres.`] : [])].join(" "))
}
