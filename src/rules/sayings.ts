/**
 * The turns of phrase that every spoken sentence is built from, in a small plain vocabulary. They hold no word that
 * answers a question of the app, since the ear may hear them.
 */

import type { Item } from "../facts/Item"
import { sayNumber } from "../facts/sayNumber"

/** "Structural steel" */
export const sayItem = (item: Item) => {
  const words = item.replaceAll("_", " ")
  return words.charAt(0).toUpperCase() + words.slice(1)
}

/** "ten square" */
export const sayMm2 = (mm2: number) => `${sayNumber(mm2)} square`

/** "Ten", to begin a sentence with a bare number. */
export const startWithNumber = (value: number) => {
  const words = sayNumber(value)
  return words.charAt(0).toUpperCase() + words.slice(1)
}

/** "twenty six metres" */
export const sayMetres = (metres: number) => `${sayNumber(metres)} ${metres === 1 ? "metre" : "metres"}`

/** "eight hundred millimetres" */
export const sayMillimetres = (mm: number) => `${sayNumber(mm)} ${mm === 1 ? "millimetre" : "millimetres"}`

/** "nought point nought five ohms" */
export const sayOhms = (ohms: number) => `${sayNumber(ohms)} ohms`

/** An expected value to the last digit that a meter shows: "about nought point nought five". */
export const sayAbout = (ohms: number) => {
  const shown = Math.round(ohms * 100) / 100
  return shown === 0 ? "under nought point nought one" : `about ${sayNumber(shown)}`
}
