/**
 * The open job: what is asked and heard beside the picture and the record. On a phone it is one column with the answers
 * always at the thumb; with room it is three columns that scroll by themselves.
 */
import { useState } from "react"
import type { Session, SessionView } from "../Session"
import { Answers } from "./Answers"
import { BondPicture } from "./BondPicture"
import { Conversation } from "./Conversation"
import { EarLoading } from "./EarLoading"
import { JobFoot } from "./JobFoot"
import { JobHead } from "./JobHead"
import { LiveWords } from "./LiveWords"
import { Notices } from "./Notices"
import { RecordList } from "./RecordList"
import { Typing } from "./Typing"
import { useAnswerKeys } from "./useAnswerKeys"
import { ValueSheet } from "./ValueSheet"
import { Warnings } from "./Warnings"

export const JobView = ({ view, session }: { view: SessionView; session: Session }) => {
  const [chosen, setChosen] = useState<string | null>(null)
  useAnswerKeys(session, chosen === null)
  const { dialogue } = view
  return (
    <div className="job">
      <JobHead view={view} session={session} />
      <main className="job-columns">
        <div className="talk">
          <Notices view={view} session={session} />
          <EarLoading view={view} />
          <Warnings dialogue={dialogue} session={session} open={setChosen} />
          <Conversation view={view} session={session} />
          <Typing session={session} />
        </div>
        <Answers view={view} session={session} />
        <div className="shown">
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls by itself and must be reached by keys */}
          <section className="drawn" aria-labelledby="picture-head" tabIndex={0}>
            <h2 id="picture-head">Terminal and bonds</h2>
            <BondPicture dialogue={dialogue} />
          </section>
          <section className="record" aria-labelledby="record-head">
            <h2 id="record-head">On record</h2>
            <RecordList dialogue={dialogue} session={session} open={setChosen} />
            <JobFoot view={view} session={session} />
          </section>
        </div>
      </main>
      {chosen !== null && <ValueSheet entry={chosen} view={view} session={session} close={() => setChosen(null)} />}
      <LiveWords view={view} />
    </div>
  )
}
