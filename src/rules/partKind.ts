/** What a bonded part is like: whether it is a pipe, and whether it comes in at one place that a clamp belongs near. */
import type { Item } from "../facts/Item"

/** What the clamp of a pipe that comes in is measured from. */
export const entryMarks: Readonly<Record<string, string>> = { gas: "meter", water: "stop valve", oil: "entry" }

const steelwork = /steel|frame|beam|column|lightning/

/** Pipes are cleaned before a clamp goes on; steelwork and lightning conductors are joined in other ways. */
export const isPipe = (item: Item): boolean => !steelwork.test(item)

/** Heating pipes go round inside: they come in nowhere. */
export const comesIn = (item: Item): boolean => isPipe(item) && item !== "heating"

/**
 * Whether the job wants a reading of this part. Nobody is asked to open an earthing conductor for one: while it is off,
 * the whole installation has no earth. What was read of it anyway is judged like any other reading.
 */
export const wantsReading = (item: Item): boolean => item !== "earthing_conductor"
