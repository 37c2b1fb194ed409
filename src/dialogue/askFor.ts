/** Puts a plain question for one field of one item, and keeps it open. */
import type { Item } from "../facts/Item"
import { sayItem } from "../interpret/sayItem"
import { sayKind } from "../interpret/sayKind"
import { capital } from "./capital"
import type { Turn } from "./Turn"

const whichPart = "Which part is that? Say water, gas, oil, steel, or earthing conductor."

/** "Water. What size?" */
export const askFor = (turn: Turn, kind: string, item: Item | null): void => {
  const name = item && item !== "supply" ? `${capital(sayItem(item))}. ` : ""
  const words = kind === "service" ? whichPart : `${name}What is the ${sayKind(kind)}?`
  turn.say(words)
  turn.set({ question: { kind, item, words, because: "not said yet", candidates: [], heard: [] }, readBack: null })
}
