/**
 * The word tables of one language, ready to look things up: what number words mean, what engines write for other words,
 * and which words are known and of which sort.
 */
import { measureGrammar } from "../grammar/measureGrammar"
import type { GrammarFolder } from "./GrammarFolder"
import type { HomophonePlace, Trust } from "./readHomophones"
import type { NumberRole } from "./readNumberWords"

export interface Meaning {
  meant: string
  trust: Trust
}

export interface WordBook {
  numberWords: ReadonlyMap<string, { role: NumberRole; value: number }>
  /** Sound-alikes by place, then by the word that was heard. */
  soundAlikes: Readonly<Record<HomophonePlace, ReadonlyMap<string, Meaning>>>
  unitWords: ReadonlySet<string>
  /** Words of a list file, empty when there is none. */
  list(name: string): ReadonlySet<string>
}

export function openWordBook(folder: GrammarFolder): WordBook {
  const at = (place: HomophonePlace) =>
    new Map(
      folder.homophones
        .filter((one) => one.place === place)
        .map((one) => [one.heard, { meant: one.meant, trust: one.trust }] as const),
    )
  return {
    numberWords: folder.numberWords,
    soundAlikes: {
      phrase: at("phrase"),
      beforeUnit: at("beforeUnit"),
      besidePoint: at("besidePoint"),
      unit: at("unit"),
      point: at("point"),
      part: at("part"),
      spelling: at("spelling"),
    },
    unitWords: new Set(measureGrammar(folder.set, "units.unit").words),
    list: (name) => folder.lists.get(name) ?? new Set(),
  }
}
