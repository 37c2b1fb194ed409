/**
 * Words that engines write for other words. A line counts only in its place, and says how far it may be trusted:
 * `sure` may be written down, `asked` only when that very thing was asked, `doubt` always leads to a question.
 */

import { readLines } from "./readLines"

/** Where a sound-alike counts: inside a grammar phrase, before a unit or "hundred", beside the point, as the point, as a unit, or as a whole answer that names a part. */
export const places = ["phrase", "beforeUnit", "besidePoint", "unit", "spelling", "point", "part"] as const
export type HomophonePlace = (typeof places)[number]

export const trusts = ["sure", "asked", "doubt"] as const
export type Trust = (typeof trusts)[number]

export interface Homophone {
  heard: string
  meant: string
  place: HomophonePlace
  trust: Trust
}

/** Reads lines of: heard, meant, place, trust; parted by tabs. Throws on a line it does not know. */
export function readHomophones(text: string): Homophone[] {
  return readLines(text).map((line) => {
    const [heard, meant, place, trust] = line.split("\t")
    if (!heard || !meant || !isOneOf(places, place) || !isOneOf(trusts, trust))
      throw new Error(`homophones.tsv: cannot read "${line}"`)
    return { heard, meant, place, trust }
  })
}

const isOneOf = <T extends string>(all: readonly T[], one: string | undefined): one is T =>
  (all as readonly (string | undefined)[]).includes(one)
