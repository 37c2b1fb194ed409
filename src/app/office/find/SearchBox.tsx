/** The one box that jobs are searched by, with what was understood as chips that can be taken out again. */
import { type RefObject, useId } from "react"
import type { Query } from "../../../search/Condition"
import type { Order } from "../../../search/createFinder"
import { Icon } from "../../parts/Icon"
import { showCondition } from "./showCondition"

interface SearchBoxProps {
  text: string
  query: Query
  order: Order
  box: RefObject<HTMLInputElement | null>
  setText(text: string): void
  setOrder(order: Order): void
}

const examples = ["open stops", "to look at", "not signed", "last week", "bonds under 10", "readings over 0.05"]
const orders: readonly (readonly [Order, string])[] = [
  ["newest", "Newest first"],
  ["oldest", "Oldest first"],
  ["place", "By place"],
  ["gravest", "Most to look at first"],
]

/** The text without one stretch of it. */
const without = (text: string, from: number, to: number) =>
  `${text.slice(0, from)} ${text.slice(to)}`.replace(/\s+/g, " ").trim()

const Chips = ({ text, query, setText, box }: SearchBoxProps) => {
  if (query.understood.length === 0) return null
  const takeOut = (from: number, to: number) => {
    setText(without(text, from, to))
    box.current?.focus()
  }
  return (
    <ul className="find-chips" aria-label="Searched by">
      {query.understood.map(({ condition, from, to }) => {
        const words = showCondition(condition)
        return (
          <li key={from}>
            <button
              type="button"
              className="find-chip"
              aria-label={`Take out: ${words}`}
              onClick={() => takeOut(from, to)}
            >
              <span>{words}</span>
              <Icon name="no" />
            </button>
          </li>
        )
      })}
    </ul>
  )
}

const NotUnderstood = ({ query }: { query: Query }) => (
  <p className="find-unclear" role="status">
    {query.notUnderstood.map(({ text, because, from }) => (
      <span key={from}>
        Not used: “{text}”, {because}.{" "}
      </span>
    ))}
  </p>
)

const Examples = ({ text, setText, box }: SearchBoxProps) => (
  <p className="find-examples">
    <span className="quiet">Try</span>
    {examples.map((words) => (
      <button
        key={words}
        type="button"
        className="small-button"
        onClick={() => {
          setText(`${text} ${words}`.trim())
          box.current?.focus()
        }}
      >
        {words}
      </button>
    ))}
  </p>
)

export const SearchBox = (props: SearchBoxProps) => {
  const { text, query, order, box, setText, setOrder } = props
  const id = useId()
  return (
    <section className="find-search" aria-label="Find jobs">
      <div className="find-fields">
        <div className="find-words">
          <label htmlFor={`${id}-words`}>Find jobs by place, day, part, value, finding or words said</label>
          <input
            id={`${id}-words`}
            ref={box}
            type="search"
            autoComplete="off"
            spellCheck={false}
            aria-keyshortcuts="/"
            placeholder="gas reading over 0.05 last week"
            value={text}
            onChange={(event) => setText(event.target.value)}
          />
        </div>
        <div>
          <label htmlFor={`${id}-order`}>Order</label>
          <select id={`${id}-order`} value={order} onChange={(event) => setOrder(event.target.value as Order)}>
            {orders.map(([value, words]) => (
              <option key={value} value={value}>
                {words}
              </option>
            ))}
          </select>
        </div>
      </div>
      <Chips {...props} />
      <NotUnderstood query={query} />
      {text === "" && <Examples {...props} />}
    </section>
  )
}
