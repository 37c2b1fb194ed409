/**
 * The open job on its screens. On a phone one screen is shown, with the answers and the ways to the others at the thumb;
 * with room, the conversation always stays, and picture and record stand beside it. All of it is on the page at any
 * time, and `job.css` decides what is seen.
 */
import { useState } from "react"
import { useHash } from "../parts/useHash"
import type { Session, SessionView } from "../Session"
import { SettingsView } from "../settings/SettingsView"
import { Alarm } from "./Alarm"
import { Answers } from "./Answers"
import { BondPicture } from "./BondPicture"
import { Conversation } from "./Conversation"
import { EarLoading } from "./EarLoading"
import { Findings } from "./Findings"
import { Following } from "./Following"
import { JobFoot } from "./JobFoot"
import { JobHead } from "./JobHead"
import { JobNav } from "./JobNav"
import { jobScreenOf } from "./jobScreen"
import { LiveWords } from "./LiveWords"
import { Notices } from "./Notices"
import { RecordList } from "./RecordList"
import { SignOff } from "./SignOff"
import { Typing } from "./Typing"
import { useAnswerKeys } from "./useAnswerKeys"
import { ValueSheet } from "./ValueSheet"
import { WarningStrip } from "./WarningStrip"
import { Warnings } from "./Warnings"

interface JobProps {
  view: SessionView
  session: Session
}

const Talk = ({ view, session, open }: JobProps & { open: (entry: string) => void }) => (
  <div className="talk">
    <EarLoading view={view} />
    <Warnings dialogue={view.dialogue} session={session} open={open} />
    <Conversation view={view} session={session} />
    <Typing dialogue={view.dialogue} session={session} />
  </div>
)

const Shown = ({ view, session, open }: JobProps & { open: (entry: string) => void }) => (
  <div className="shown">
    {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls by itself and must be reached by keys */}
    <section className="drawn" aria-labelledby="picture-head" tabIndex={0}>
      <h2 id="picture-head">Terminal and bonds</h2>
      <BondPicture dialogue={view.dialogue} />
    </section>
    <section className="record" aria-labelledby="record-head">
      <h2 id="record-head">On record</h2>
      <RecordList dialogue={view.dialogue} session={session} open={open} />
      <JobFoot view={view} session={session} />
    </section>
  </div>
)

export const JobView = ({ view, session }: JobProps) => {
  const [chosen, setChosen] = useState<string | null>(null)
  const screen = jobScreenOf(useHash())
  useAnswerKeys(session, chosen === null && !view.follows)
  const { dialogue } = view
  const beside = screen === "now" || screen === "picture" || screen === "record"
  return (
    <div className={view.follows ? "job follows" : "job"} data-screen={screen}>
      <JobHead view={view} session={session} screen={screen} />
      <JobNav view={view} screen={screen} />
      <main className="job-columns">
        <div className="job-top">
          {view.follows && <Following session={session} />}
          <Notices view={view} session={session} />
          <WarningStrip dialogue={dialogue} />
        </div>
        <Talk view={view} session={session} open={setChosen} />
        <Answers view={view} session={session} />
        {beside && <Shown view={view} session={session} open={setChosen} />}
        {!beside && (
          <div className="pane">
            {screen === "findings" && <Findings dialogue={dialogue} session={session} open={setChosen} />}
            {screen === "sign-off" && <SignOff view={view} session={session} open={setChosen} />}
            {screen === "settings" && <SettingsView view={view} session={session} />}
          </div>
        )}
      </main>
      {chosen !== null && <ValueSheet entry={chosen} view={view} session={session} close={() => setChosen(null)} />}
      {view.alarm && <Alarm view={view} session={session} />}
      <LiveWords view={view} />
    </div>
  )
}
