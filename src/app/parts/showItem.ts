/** Names of items for the screen. A part that the worker named is shown in the worker's words. */
import type { Item } from "../../facts/Item"

const names: Partial<Record<Item, string>> = {
  met: "Main earthing terminal",
  job: "Job",
}

/** "structural_steel" as "Structural steel". */
export const showItem = (item: Item): string => {
  const words = item.replaceAll("_", " ")
  return names[item] ?? `${words.charAt(0).toUpperCase()}${words.slice(1)}`
}
