/**
 * What a simulated worker has to report on one part of a job, and how each thing can be said: in full, in short when it
 * was asked for, and as a repair. Readings fit the size and the length, so that no rule is broken.
 */
import type { RecordedFact } from "../../../src/facts/Fact"
import type { Item } from "../../../src/facts/Item"
import { sayNumber } from "../../../src/facts/sayNumber"

export interface SpokenEntry {
  fact: RecordedFact
  /** Names the part; can be said at any time. */
  full: string
  /** An answer to the question for it. */
  bare: string
  /** Puts a wrong value right; the same as `full` where there is no repair for its kind. */
  repair: string
}

export interface PartOfJob {
  item: Item
  /** The name of the part as it is said. */
  name: string
  entries: SpokenEntry[]
}

export type Random = () => number

const parts: ReadonlyArray<readonly [Item, string]> = [
  ["water", "water bond"],
  ["gas", "gas bond"],
  ["oil", "oil bond"],
  ["structural_steel", "steel bond"],
]
const sizesMm2 = [10, 16, 25] as const
const places = ["meter", "stopcock", "point of entry"]
/** Ohm millimetres squared a metre, of copper (IEC 60228 gives 1.83 mΩ/m for 10 mm²). */
const copper = 0.0183

const pick = <T>(list: readonly T[], random: Random): T => list[Math.floor(random() * list.length)]!

/** A clamp is at most 600 mm from the meter, where that can be done. */
const sayDistance = (mm: number) => {
  const [hundreds, rest] = [Math.floor(mm / 100), mm % 100]
  const tens = rest === 0 ? "" : ` and ${sayNumber(rest)}`
  return hundreds === 0 ? sayNumber(mm) : `${sayNumber(hundreds)} hundred${tens}`
}

export const entriesOfJob = (random: Random): PartOfJob => {
  const [item, name] = pick(parts, random)
  const size = pick(sizesMm2, random)
  const metres = 2 + Math.floor(random() * 38)
  const mm = 50 * (1 + Math.floor(random() * 12))
  const ohms = Math.max(1, Math.round((100 * copper * metres) / size)) / 100
  return partWith({ item, name, size, metres, mm, place: pick(places, random), ohms })
}

/** The two bonds of the sample job in `samples/`. */
export const bakeryParts = (): PartOfJob[] => [
  partWith({ item: "gas", name: "gas bond", size: 10, metres: 8, mm: 400, place: "meter", ohms: 0.02 }),
  partWith({ item: "water", name: "water bond", size: 10, metres: 26, mm: 300, place: "stopcock", ohms: 0.05 }),
]

interface Values {
  item: Item
  name: string
  size: number
  metres: number
  mm: number
  place: string
  ohms: number
}

const partWith = ({ item, name, size, metres, mm, place, ohms }: Values): PartOfJob => {
  const [sizeWords, lengthWords] = [`${sayNumber(size)} square`, `${sayNumber(metres)} metres`]
  const distanceWords = `${sayDistance(mm)} mil off the ${place}`
  const ohmsWords = `${sayNumber(ohms, 2)} ohms`
  const subject = item
  return {
    item,
    name,
    entries: [
      {
        fact: { kind: "conductor_csa", value: size, unit: "mm2", subject },
        full: `${name} ${sizeWords}`,
        bare: sizeWords,
        repair: `make that ${sizeWords}`,
      },
      {
        fact: { kind: "length", value: metres, unit: "m", subject },
        full: `${name} ${lengthWords}`,
        bare: lengthWords,
        repair: `make that ${lengthWords}`,
      },
      {
        fact: { kind: "distance", value: mm, unit: "mm", subject },
        full: `${name} ${distanceWords}`,
        bare: distanceWords,
        repair: `make that ${distanceWords}`,
      },
      {
        fact: { kind: "step_done", value: "clamp_fitted", subject },
        full: `${name} clamp fitted`,
        bare: "clamp fitted",
        repair: `${name} clamp fitted`,
      },
      {
        fact: { kind: "resistance", value: ohms, unit: "ohm", subject },
        full: `${name} ${ohmsWords}`,
        bare: ohmsWords,
        repair: `make that ${ohmsWords}`,
      },
    ],
  }
}
