/** Parts whose names are nearly what was heard: to be asked about, never taken. */
import Fuse from "fuse.js"
import { type Item, knownServices } from "../facts/Item"

/** How far a name may be from what was heard, from 0 to 1; `npm run bench -- names` prints the curve it was set by. */
export const nearness = 0.34

/** A search for parts by a name that may be wrong, nearest first. */
export function openNearParts(threshold = nearness): (heard: string) => Item[] {
  const names = knownServices.map((item) => ({ item, name: item.replaceAll("_", " ") }))
  const near = new Fuse(names, { keys: ["name"], threshold, distance: 4, ignoreLocation: false })
  return (heard) => near.search(heard).map((one) => one.item.item)
}
