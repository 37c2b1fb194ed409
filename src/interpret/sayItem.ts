/** An item's name as the trade says it. */
import type { Item } from "../facts/Item"

const names: Readonly<Record<string, string>> = {
  supply: "supply",
  earthing_conductor: "earthing conductor",
  met: "main earth terminal",
  test_leads: "test leads",
}

/** "structural_steel" → "structural steel". A name made up by the worker is said as he said it. */
export const sayItem = (item: Item): string => names[item] ?? item.replaceAll("_", " ")
