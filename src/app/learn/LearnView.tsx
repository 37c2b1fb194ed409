/**
 * The ear learns the worker's voice: twenty sentences to read, one at a time, each ticked when it was heard. It can be
 * left at any moment, and nothing that is said here is kept or written.
 */
import { useEffect, useRef, useState, useSyncExternalStore } from "react"
import { EarState } from "../field/EarState"
import { Notices } from "../field/Notices"
import { Icon } from "../parts/Icon"
import { State } from "../parts/Mark"
import type { Session, SessionView } from "../Session"
import { ForgetVoice } from "./ForgetVoice"
import type { Learner, LearnView as View } from "./Learner"
import { prompts } from "./prompts"
import { voiceWords } from "./voiceWords"

interface LearnProps {
  view: SessionView
  session: Session
}

const Welcome = ({ start }: { start: () => void }) => (
  <section className="lesson-card">
    <h2>Twenty sentences</h2>
    <p>
      Read them aloud in a quiet place, as you talk at work. The ear measures how well they fit what it knows, so that
      it asks you less often where your voice is not like most.
    </p>
    <p>It asks for the microphone. No sound is kept, and what is learnt stays on this device.</p>
    <button type="button" className="main-button" onClick={start}>
      <Icon name="ear" />
      <span>Start reading</span>
    </button>
  </section>
)

/** What stands under the prompt. The words alone are told to screen readers. */
const Told = ({ at }: { at: View["at"] }) => {
  if (at === "heard") return <State shape="yes" words="Heard" />
  if (at === "again") return <State shape="awaiting" words="Say it again" />
  return <span className="quiet">{at === "starting" ? "Getting the ear ready" : "Read it aloud"}</span>
}

const Reading = ({
  view,
  learn,
  learner,
  stop,
}: {
  view: SessionView
  learn: View
  learner: Learner
  stop: () => void
}) => {
  const { at, index, marks } = learn
  return (
    <section className="lesson-card learn-card" aria-labelledby="learn-prompt">
      <p className="kicker">
        {index + 1} of {prompts.length}
      </p>
      <progress max={prompts.length} value={marks.length} aria-label="Sentences done" />
      <h2 id="learn-prompt" className="asked-words" aria-live="polite">
        {prompts[index]}
      </h2>
      <p className="learn-told" role="status">
        <Told at={at} />
      </p>
      <EarState view={{ ...view, ear: { ...view.ear, ...learn.ear } }} />
      <div className="way-row">
        <button type="button" onClick={() => learner.skip()}>
          <Icon name="play" />
          <span>Skip</span>
        </button>
        <button type="button" onClick={stop}>
          <Icon name="earOff" />
          <span>Stop</span>
        </button>
      </div>
    </section>
  )
}

const Learnt = ({ learn, session, again }: { learn: View; session: Session; again: () => void }) => {
  const heard = learn.marks.filter((mark) => mark === "heard").length
  return (
    <section className="lesson-card" role="status">
      <h2>That is all</h2>
      {learn.voice && <State shape="yes" words={`${heard} of ${prompts.length} sentences heard`} />}
      <p>{learn.voice ? voiceWords(learn.voice) : learn.because}</p>
      {learn.voice ? (
        <p className="quiet">
          Numbers are held apart as strictly as before, and every reading still waits for your yes.
        </p>
      ) : (
        <p>Nothing was changed.</p>
      )}
      {learn.voice ? (
        <ForgetVoice keeper={session.settings} />
      ) : (
        <button type="button" onClick={again}>
          <Icon name="again" />
          <span>Read again</span>
        </button>
      )}
      <a className="button main-button" href="#jobs">
        To the jobs
      </a>
    </section>
  )
}

interface UnderProps extends LearnProps {
  learner: Learner
  start: () => void
  stop: () => void
}

const Under = ({ view, session, learner, start, stop }: UnderProps) => {
  const learn = useSyncExternalStore(learner.subscribe, learner.snapshot, learner.snapshot)
  if (learn.at === "learnt" || learn.at === "failed") return <Learnt learn={learn} session={session} again={start} />
  return <Reading view={view} learn={learn} learner={learner} stop={stop} />
}

export const LearnView = ({ view, session }: LearnProps) => {
  const [learner, setLearner] = useState<Learner | null>(null)
  const current = useRef<Learner | null>(null)
  useEffect(() => () => current.current?.end(), [])
  const stop = () => {
    current.current?.end()
    setLearner(null)
  }
  const start = () =>
    void session.startLearning().then((made) => {
      current.current = made
      setLearner(made)
      return made.start()
    })
  return (
    <main className="start lesson">
      <a className="button back" href="#settings">
        <Icon name="back" />
        <span>Settings</span>
      </a>
      <h1>Learn my voice</h1>
      <Notices view={view} session={session} />
      {learner ? (
        <Under view={view} session={session} learner={learner} start={start} stop={stop} />
      ) : (
        <Welcome start={start} />
      )}
    </main>
  )
}
