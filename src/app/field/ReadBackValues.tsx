/** Values that were just read back, as large as the column allows, and whether they need a yes. */
import type { DialogueState, ReadBack } from "../../dialogue/DialogueState"
import type { Held } from "../../record/JobRecord"
import { State } from "../parts/Mark"
import { showFact } from "../parts/showFact"
import { showItem } from "../parts/showItem"

const Value = ({ held }: { held: Held }) => {
  const { label, value } = showFact(held.fact)
  return (
    <li>
      <span className="read-label">{label}</span>
      <span className={value.length > 14 ? "read-value read-long" : "read-value"}>{value}</span>
    </li>
  )
}

export const ReadBackValues = ({ dialogue, readBack }: { dialogue: DialogueState; readBack: ReadBack }) => {
  const entries = dialogue.record.entries.filter((held) => readBack.entries.includes(held.entry))
  const values = entries.filter((held) => held.fact.kind !== "service")
  const item = entries.find((held) => held.entry === readBack.main)?.item ?? entries[0]?.item ?? dialogue.item
  return (
    <div className={readBack.needsYes ? "asked asked-yes" : "asked"}>
      <h2 className="kicker">{item ? showItem(item) : "Read back"}</h2>
      <ul className="read-values">
        {(values.length > 0 ? values : entries).map((held) => (
          <Value key={held.entry} held={held} />
        ))}
      </ul>
      {readBack.needsYes ? (
        <State shape="awaiting" words="Is that it? Yes or no." />
      ) : (
        <State shape="fresh" words="Carry on if that is it, or say no." />
      )}
    </div>
  )
}
