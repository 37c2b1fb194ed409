/** The office's first screen: every job on this device, searched by plain words. */
import { type RefObject, useDeferredValue, useEffect, useRef, useState, useSyncExternalStore } from "react"
import type { JobRow } from "../../../record/JobRow"
import { Brand } from "../../parts/Brand"
import { useOpened } from "../../parts/useOpened"
import type { Desk } from "../Desk"
import { TakeInPanel } from "../takeIn/TakeInPanel"
import { takeInOf } from "../takeIn/takeInOf"
import { JobTable } from "./JobTable"
import { type Register, registerOf } from "./Register"
import { SearchBox } from "./SearchBox"
import "./find.css"

interface CountProps {
  found: number
  read: number
  unread: number
  toRenew: number
}

const Count = ({ found, read, unread, toRenew }: CountProps) => (
  <p className="find-count" role="status">
    <strong>{found === read ? `${read + unread} jobs` : `${found} of ${read} jobs`}</strong>
    {unread > 0 && <span className="quiet"> The newest {read} have been looked at; the others are being read.</span>}
    {toRenew > 0 && <span className="quiet"> {toRenew} are still being looked through; what is found may change.</span>}
  </p>
)

/** Fetched when first asked for. */
const Charts = ({ rows }: { rows: readonly JobRow[] }) => {
  const charts = useOpened(() => import("../charts/ChartsView"))
  if (charts === null) return <p role="status">Drawing the charts.</p>
  if (charts === "failed") return <p role="alert">The charts could not be loaded. Load the page again.</p>
  return <charts.ChartsView rows={rows} />
}

const useSearch = (register: Register, now: () => string) => {
  useSyncExternalStore(register.subscribe, register.snapshot)
  const [text, setText] = useState(register.query)
  const [order, setOrder] = useState(register.order)
  // The box keeps up with the fingers; the list follows as soon as it can.
  const { query, rows } = register.search(useDeferredValue(text), order, now())
  useEffect(() => {
    register.query = text
    register.order = order
  }, [register, text, order])
  return { text, setText, order, setOrder, query, rows }
}

/** "/" goes to the search box from anywhere but a field; the arrow down goes from it into the list. */
const useKeys = (box: RefObject<HTMLInputElement | null>, enter: RefObject<() => void>) => {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const field = (event.target as HTMLElement).closest?.("input, select, textarea")
      if (event.key === "ArrowDown" && field === box.current) enter.current()
      else if (event.key === "/" && !field) {
        box.current?.focus()
        box.current?.select()
      } else return
      event.preventDefault()
    }
    document.addEventListener("keydown", press)
    return () => document.removeEventListener("keydown", press)
  }, [box, enter])
}

const Jobs = ({ register, now }: { register: Register; now: () => string }) => {
  const { unread, toRenew } = useSyncExternalStore(register.subscribe, register.snapshot)
  const search = useSearch(register, now)
  const box = useRef<HTMLInputElement>(null)
  const enter = useRef(() => {})
  useKeys(box, enter)
  const [charts, setCharts] = useState(false)
  const { rows } = search
  return (
    <>
      <SearchBox {...search} box={box} />
      <div className="find-sum">
        <Count found={rows.length} read={register.finder.size} unread={unread} toRenew={toRenew} />
        <button type="button" className="small-button" onClick={() => setCharts(!charts)}>
          {charts ? "Show the list" : "Show readings as charts"}
        </button>
      </div>
      {rows.length === 0 && unread === 0 && register.finder.size > 0 && (
        <p>No job is like that. Take out a condition above, or put other words in quotation marks.</p>
      )}
      {rows.length > 0 && !charts && (
        <JobTable
          rows={rows}
          current={register.opened}
          faultsOf={(job) => register.faultsOf(job)}
          opening={(job) => {
            register.opened = job
          }}
          leaveUp={() => box.current?.focus()}
          enter={enter}
        />
      )}
      {rows.length > 0 && charts && <Charts rows={rows} />}
    </>
  )
}

const Found = ({ desk, register }: { desk: Desk; register: Register }) => {
  const { phase } = useSyncExternalStore(register.subscribe, register.snapshot)
  if (phase === "reading") return <p role="status">Looking for jobs on this device.</p>
  if (phase === "failed") return <p role="alert">The stored jobs could not be read. Load the page again.</p>
  return <Jobs register={register} now={desk.now} />
}

export const FindView = ({ desk }: { desk: Desk }) => {
  const register = registerOf(desk.store)
  useEffect(() => {
    const look = () => {
      if (document.visibilityState === "visible") void register.refresh()
    }
    look()
    document.addEventListener("visibilitychange", look)
    const unwatch = desk.watch?.((jobs) => void register.changed(jobs))
    return () => {
      document.removeEventListener("visibilitychange", look)
      unwatch?.()
    }
  }, [register, desk.watch])
  return (
    <main className="find">
      <header className="find-head">
        <Brand />
        <h1>Office</h1>
        <a className="button" href="./">
          Start page
        </a>
      </header>
      <TakeInPanel takeIn={takeInOf(desk, () => void register.refresh())} />
      <Found desk={desk} register={register} />
    </main>
  )
}
