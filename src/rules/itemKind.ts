/**
 * What sort of thing an item is to the rules. A part that the worker named is a main bond unless its name says that it
 * is an electrode or a supplementary bond.
 */
import { fixedItems, type Item } from "../facts/Item"

export type ItemKind = "main_bond" | "supplementary_bond" | "earthing_conductor" | "met" | "electrode" | "other"

export const kindOfItem = (item: Item): ItemKind => {
  if (item === "earthing_conductor" || item === "met") return item
  if ((fixedItems as readonly string[]).includes(item)) return "other"
  if (/(^|_)(electrode|rod)(_|$)/.test(item)) return "electrode"
  return /(^|_)supplementary(_|$)/.test(item) ? "supplementary_bond" : "main_bond"
}
