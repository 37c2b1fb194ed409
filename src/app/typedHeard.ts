/** A typed sentence as if an ear had given it, so that it goes the way of a spoken one. */
import { v7 } from "uuid"
import type { Heard } from "../facts/Heard"

export const typedHeard = (words: string): Heard => {
  const at = performance.now() / 1000
  return { id: v7(), text: words, alternatives: [], words: [], start: at, end: at, engine: "typed", margin: null }
}
