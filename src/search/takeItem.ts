/** The name of a part at the cursor, as the trade says it or as workers on these jobs named it. */
import type { Item } from "../facts/Item"
import type { Cursor } from "./Cursor"

const tradeNames: readonly (readonly [Item, string])[] = [
  ["earthing_conductor", "(?:main )?earthing conductors?|main earths?|earth conductors?"],
  ["lightning_protection", "lightning(?: protection| conductor)?"],
  ["structural_steel", "structural steel(?:work)?|steelwork|steel"],
  ["heating", "(?:central )?heating"],
  ["water", "(?:cold )?water"],
  ["gas", "gas"],
  ["oil", "oil"],
  ["test_leads", "test leads"],
]
const kind = "(?: (?:bonds?|bonding|pipes?|mains?|supply))?"
/** What carries a part's name and is none. */
const notPart = "(?! (?:meter|man|board|engineer|heater|boiler|company|valve|leak))"

/** Names longer than one letter only; `items` are those on the jobs that are searched. */
export const takeItem = (cursor: Cursor, items: readonly Item[]): Item | null => {
  for (const [item, pattern] of tradeNames) if (cursor.take(`(?:${pattern})${notPart}${kind}`)) return item
  const known = items.filter((item) => item.length > 2).sort((a, b) => b.length - a.length)
  return known.find((item) => cursor.take(`${item.replaceAll("_", " ")}${notPart}${kind}`)) ?? null
}
