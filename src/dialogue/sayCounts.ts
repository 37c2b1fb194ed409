/** How much is open, in the same words wherever it is said. */
import { sayNumber } from "../facts/sayNumber"
import { capital } from "./capital"

/** "Two open warnings."; nothing where there is none. */
export const sayOpenWarnings = (count: number): string[] =>
  count === 0 ? [] : [`${capital(sayNumber(count))} open ${count === 1 ? "warning" : "warnings"}.`]

/** "And two more items.", of what was not named; nothing where all were. */
export const sayMoreItems = (all: number, named: number): string[] =>
  all > named ? [`And ${sayNumber(all - named)} more ${all - named === 1 ? "item" : "items"}.`] : []
