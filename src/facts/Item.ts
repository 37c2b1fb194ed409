/** The things on a job that values belong to. Bonded parts beyond the known ones are named by the worker. */
import { z } from "zod"

/** Parts that are commonly bonded, in the order they are shown. */
export const knownServices = ["water", "gas", "oil", "structural_steel", "heating", "lightning_protection"] as const

/** An item's name in lower case with underscores: a known one, or one the worker made up. */
export const Item = z.string().regex(/^[a-z][a-z0-9]*(_[a-z0-9]+)*$/)
export type Item = z.infer<typeof Item>

/** Items that are part of every job and are not bonds. */
export const fixedItems = ["supply", "earthing_conductor", "met", "test_leads"] as const

/** Whether an item is a main bond, known or named by the worker. */
export const isBond = (item: Item) => !(fixedItems as readonly string[]).includes(item)
