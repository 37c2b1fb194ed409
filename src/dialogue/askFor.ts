/** Puts a plain question for one field of one item, and keeps it open. */
import type { Item } from "../facts/Item"
import { sayItem } from "../interpret/sayItem"
import { sayKind } from "../interpret/sayKind"
import { capital } from "./capital"
import { sayToSpell, slotNamed } from "./spelling"
import type { Turn } from "./Turn"

const whichPart = "Which part is that? Say water, gas, oil, steel, or earthing conductor."

/** Said where the same question is put once more. */
export const howToLeave = "To leave it, say skip."

/** `lead` is said before the question and again with it. */
interface Way {
  lead?: string
  byDigits?: boolean
}

/** "Water. What is the size?" */
export const askFor = (
  turn: Turn,
  kind: string,
  item: Item | null,
  { lead = "", byDigits = false }: Way = {},
): void => {
  const name = item && item !== "supply" ? `${capital(sayItem(item))}. ` : ""
  const plain = kind === "service" ? whichPart : `${name}What is the ${sayKind(kind)}?`
  const question = byDigits ? sayToSpell(kind, item) : plain
  const words = lead === "" ? question : `${lead} ${question}`
  turn.say(words)
  turn.set({
    question: { kind, item, words, because: "not said yet", candidates: [], heard: [] },
    readBack: null,
    doubt: null,
    spelled: byDigits ? slotNamed(kind, item) : null,
  })
}
