/** A typed sentence as if an ear had given it, so that it goes the way of a spoken one. */
import type { Heard } from "./Heard"

/** `at`: seconds on the clock that utterances are told by; nought where there is none. */
export const typedHeard = (id: string, text: string, at = 0): Heard => ({
  id,
  text,
  alternatives: [],
  words: [],
  start: at,
  end: at,
  engine: "typed",
  margin: null,
})
