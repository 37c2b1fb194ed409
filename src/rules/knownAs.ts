/** Schemas of the values that rules name in their `needs`. */
import { z } from "zod"
import { Arrangement } from "../facts/Fact"
import { Item } from "../facts/Item"
import { Qualifier } from "../facts/Quantity"
import { Instrument } from "../facts/Situation"

export const knownAs = {
  item: Item,
  arrangement: Arrangement,
  positive: z.number().positive(),
  ohms: z.number().nonnegative().nullable(),
  mm: z.number().nonnegative(),
  qualifier: Qualifier,
  instrument: Instrument,
  flag: z.boolean(),
}
