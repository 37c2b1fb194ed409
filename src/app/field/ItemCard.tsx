/** One item's values. Each is a button that opens its words and history. */
import { type Item, isBond } from "../../facts/Item"
import type { Held } from "../../record/JobRecord"
import { entryState } from "../parts/entryState"
import { Icon } from "../parts/Icon"
import { Mark, State } from "../parts/Mark"
import { showFact } from "../parts/showFact"
import { showItem } from "../parts/showItem"

interface CardProps {
  item: Item
  current: boolean
  held: readonly Held[]
  /** Entries that an open warning rests on. */
  warned: ReadonlySet<string>
  open: (entry: string) => void
  choose: () => void
}

const StepChip = ({ held, warned, open }: { held: Held; warned: boolean; open: () => void }) => {
  const { shape, words } = entryState(held)
  return (
    <li>
      <button type="button" className={warned ? "step-chip warned" : "step-chip"} onClick={open}>
        <Mark shape={warned ? "warn" : shape} />
        <span>
          {showFact(held.fact).label}
          <span className="unseen">{warned ? `, warning, ${words}` : `, ${words}`}</span>
        </span>
      </button>
    </li>
  )
}

/** The card's heading has the name already. */
const onlyNamed = { label: "Named", value: "no values yet" }

const ValueRow = ({ held, warned, open }: { held: Held; warned: boolean; open: () => void }) => {
  const { label, value } = held.fact.kind === "service" ? onlyNamed : showFact(held.fact)
  const { shape, words } = entryState(held)
  return (
    <li>
      <button type="button" className={warned ? "value-row warned" : "value-row"} onClick={open}>
        <span className="value-label">{label}</span>
        <span className="value">{value}</span>
        <span className="value-states">
          {warned && <State shape="warn" words="warning" />}
          <State shape={shape} words={words} />
        </span>
      </button>
    </li>
  )
}

export const ItemCard = ({ item, current, held, warned, open, choose }: CardProps) => {
  const named = held.find((one) => one.fact.kind === "service")
  const values = held.filter((one) => one !== named)
  const steps = values.filter((one) => one.fact.kind === "step_done")
  const rows = values.length > 0 || !named ? values.filter((one) => !steps.includes(one)) : [named]
  const canChoose = isBond(item) ? item !== "job" : item === "earthing_conductor"
  return (
    <article className={current ? "item item-current" : "item"}>
      <header>
        <h3>{showItem(item)}</h3>
        {current && <span className="item-now">being talked about</span>}
        {canChoose && !current && (
          <button type="button" className="small-button" onClick={choose}>
            <Icon name="ear" />
            <span>
              Talk about <span className="unseen">{showItem(item).toLowerCase()}</span>
              <span aria-hidden="true">it</span>
            </span>
          </button>
        )}
      </header>
      <ul className="values">
        {rows.map((one) => (
          <ValueRow key={one.entry} held={one} warned={warned.has(one.entry)} open={() => open(one.entry)} />
        ))}
      </ul>
      {steps.length > 0 && (
        <ul className="steps" aria-label={`Steps done, ${showItem(item).toLowerCase()}`}>
          {steps.map((one) => (
            <StepChip key={one.entry} held={one} warned={warned.has(one.entry)} open={() => open(one.entry)} />
          ))}
        </ul>
      )}
    </article>
  )
}
