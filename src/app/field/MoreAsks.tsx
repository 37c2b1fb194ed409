/**
 * What is asked or told less often, by tap: what comes next, what is known or wanted of the part in hand, and a smell of
 * gas, which is answered at once.
 */
import type { DialogueState } from "../../dialogue/DialogueState"
import type { Command } from "../../facts/Interpretation"
import { showItem } from "../parts/showItem"
import type { Session } from "../Session"

type Kind = Extract<
  Command["kind"],
  "whats_next" | "what_size" | "what_should_it_read" | "how_long" | "what_did_i_say" | "start_over"
>

const ofPart: readonly (readonly [kind: Exclude<Kind, "whats_next">, words: string])[] = [
  ["what_size", "What size"],
  ["what_should_it_read", "What should it read"],
  ["how_long", "How long can it be"],
  ["what_did_i_say", "What did I say"],
  ["start_over", "Start it over"],
]

export const MoreAsks = ({ dialogue, session }: { dialogue: DialogueState; session: Session }) => {
  const { item } = dialogue
  const ask = (act: Command) => session.send({ type: "tapped", act })
  return (
    <details className="more-asks">
      <summary>More to ask{item ? `, ${showItem(item).toLowerCase()}` : ""}</summary>
      <div className="long-answers">
        <button type="button" onClick={() => ask({ kind: "whats_next" })}>
          What next
        </button>
        <button type="button" onClick={() => ask({ kind: "smells_gas" })}>
          I smell gas
        </button>
        {item &&
          ofPart.map(([kind, words]) => (
            <button key={kind} type="button" onClick={() => ask({ kind, subject: item })}>
              {words}
            </button>
          ))}
      </div>
    </details>
  )
}
