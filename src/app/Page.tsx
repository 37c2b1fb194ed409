/** The app from the first paint on: the opening screen until its session is there. */
import { useEffect, useState } from "react"
import { App } from "./App"
import { Opening } from "./Opening"
import type { Session } from "./Session"

export const Page = ({ opening }: { opening: Promise<Session> }) => {
  const [session, setSession] = useState<Session | "failed" | null>(null)
  useEffect(() => {
    opening.then(setSession, () => setSession("failed"))
  }, [opening])
  return session === null || session === "failed" ? (
    <div className="app">
      <Opening failed={session === "failed"} />
    </div>
  ) : (
    <App session={session} />
  )
}
