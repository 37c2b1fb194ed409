/**
 * The app from the first paint on: the field side, or the office where the address says so. The office opens without a
 * session, so that looking at a job never takes it up or wakes the voice.
 */
import { useEffect, useState } from "react"
import { App } from "./App"
import { Opening } from "./Opening"
import type { Desk } from "./office/Desk"
import { officePlace } from "./office/officePlace"
import { useHash } from "./parts/useHash"
import { useOpened } from "./parts/useOpened"
import type { Session } from "./Session"

/** The office's screens and what they work with, fetched side by side. */
const openOffice = async (openDesk: () => Promise<Desk>) => {
  const [{ OfficeView }, desk] = await Promise.all([import("./office/OfficeView"), openDesk()])
  return { OfficeView, desk }
}

const Blank = ({ failed = false }: { failed?: boolean }) => (
  <div className="app">
    <Opening failed={failed} />
  </div>
)

const Field = ({ openSession }: { openSession: () => Session }) => <App session={openSession()} />

const Office = ({ openDesk, job }: { openDesk: () => Promise<Desk>; job: string | null }) => {
  const office = useOpened(() => openOffice(openDesk))
  if (office === null || office === "failed") return <Blank failed={office === "failed"} />
  return <office.OfficeView desk={office.desk} job={job} />
}

interface PageProps {
  /** The same session however often it is asked for. */
  openSession: () => Session
  openDesk: () => Promise<Desk>
}

export const Page = ({ openSession, openDesk }: PageProps) => {
  const place = officePlace(useHash())
  const [side] = useState(place ? "office" : "field")
  // One page is either side, never both: a session that holds a job would not see what the desk adds to it.
  const left = (place ? "office" : "field") !== side
  useEffect(() => {
    if (left) window.location.reload()
  }, [left])
  if (left) return <Blank />
  return place ? <Office openDesk={openDesk} job={place.job} /> : <Field openSession={openSession} />
}
