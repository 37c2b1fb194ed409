/** The record so far, by item: the fixed items first, then the parts in the order they were named. */
import { memo } from "react"
import type { DialogueState } from "../../dialogue/DialogueState"
import { fixedItems, type Item } from "../../facts/Item"
import { allHeld } from "../../record/holding"
import type { Held } from "../../record/JobRecord"
import { itemOf } from "../../record/slotOf"
import { openWarnings } from "../../record/warningKey"
import type { Session } from "../Session"
import { ItemCard } from "./ItemCard"

interface RecordProps {
  dialogue: DialogueState
  session: Session
  open: (entry: string) => void
}

/** Entries that a warning is about: those of its own item, not the supply it was worked out with. */
const warnedEntries = ({ record, checked }: DialogueState, held: readonly Held[]): ReadonlySet<string> => {
  const open = openWarnings(record, checked.findings)
  const isMeant = (one: Held) =>
    open.some(({ rests, item }) => rests.includes(one.entry) && (item === undefined || item === itemOf(one.fact)))
  return new Set(held.filter(isMeant).map((one) => one.entry))
}

/** Left alone while only the sound level changes. */
export const RecordList = memo(({ dialogue, session, open }: RecordProps) => {
  const held = allHeld(dialogue.record)
  const bonds = dialogue.record.items.filter((item) => !(fixedItems as readonly Item[]).includes(item))
  const order = [...fixedItems, ...bonds, "job"].filter((item) => held.some((one) => itemOf(one.fact) === item))
  const warned = warnedEntries(dialogue, held)
  if (order.length === 0) return <p className="quiet">Nothing yet. Every value you say is listed here.</p>
  return (
    <>
      {order.map((item) => (
        <ItemCard
          key={item}
          item={item}
          current={item === dialogue.item}
          held={held.filter((one) => itemOf(one.fact) === item)}
          warned={warned}
          open={open}
          choose={() => session.send({ type: "chose", item })}
        />
      ))}
    </>
  )
})
