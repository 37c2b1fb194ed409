/**
 * The first run: hear the voice, see that the microphone hears, and say five sentences after it. It can be left at any
 * moment, works by tap where there is no microphone, and writes nothing.
 */
import { useEffect, useState } from "react"
import { Answers } from "../field/Answers"
import { EarLoading } from "../field/EarLoading"
import { LiveWords } from "../field/LiveWords"
import { Notices } from "../field/Notices"
import { ReadBackValues } from "../field/ReadBackValues"
import { WarningStrip } from "../field/WarningStrip"
import { Icon } from "../parts/Icon"
import { State } from "../parts/Mark"
import { useView } from "../parts/useView"
import type { Session, SessionView } from "../Session"
import { lessonSteps } from "./lessonSteps"
import { practiceJob } from "./lessonStore"
import { useLesson } from "./useLesson"

interface LessonProps {
  view: SessionView
  session: Session
}

const sounds = [
  ["one short note", "it listens"],
  ["two quick notes", "got it"],
  ["two long notes", "say it again"],
  ["three loud notes", "a warning"],
] as const

const Sounds = () => (
  <dl className="facts lesson-sounds">
    {sounds.map(([sound, means]) => (
      <div key={sound}>
        <dt>{sound}</dt>
        <dd>{means}</dd>
      </div>
    ))}
  </dl>
)

const Done = () => (
  <section className="lesson-card">
    <h2>That is all</h2>
    <p>
      Nothing of this was kept. In a job, say “what’s left” when you do not know how to go on, and “say again” when you
      did not hear.
    </p>
    <Sounds />
    <a className="button main-button" href="#jobs">
      To the jobs
    </a>
  </section>
)

const Step = ({ view, session }: LessonProps) => {
  const { step, number, skip } = useLesson(view, session)
  const { dialogue } = view
  if (!step) return <Done />
  return (
    <section className="lesson-card" aria-labelledby="lesson-title">
      <p className="kicker">
        {number} of {lessonSteps.length}
      </p>
      <h2 id="lesson-title">{step.title}</h2>
      <p className="quiet">Say</p>
      <p className="asked-words">“{step.words}”</p>
      <p>{step.about}</p>
      {dialogue.lastHeard && (
        <p className="lesson-heard">
          <Icon name="ear" /> Heard: “{dialogue.lastHeard.text}”
        </p>
      )}
      {dialogue.readBack && <ReadBackValues dialogue={dialogue} readBack={dialogue.readBack} />}
      {step.isDone(dialogue) && <State shape="yes" words="Understood" />}
      <div className="way-row">
        <button type="button" onClick={() => session.type(step.words)}>
          <Icon name="send" />
          <span>Show me</span>
        </button>
        <button type="button" onClick={skip}>
          <Icon name="play" />
          <span>Next</span>
        </button>
      </div>
    </section>
  )
}

/** The practice session, once the tap that wakes voice and ear has come; it ends with the screen. */
const Practice = ({ session }: { session: Session }) => {
  const view = useView(session)
  useEffect(() => () => session.closeJob(), [session])
  if (view.phase !== "job") return <p role="status">Getting ready.</p>
  return (
    <>
      <Notices view={view} session={session} />
      <WarningStrip dialogue={view.dialogue} />
      <EarLoading view={view} />
      <Step view={view} session={session} />
      <Answers view={view} session={session} />
      <LiveWords view={view} />
    </>
  )
}

const Welcome = ({ start }: { start: () => void }) => (
  <section className="lesson-card">
    <h2>One minute, by voice</h2>
    <p>The app says five sentences, and you say them after it. You see what it heard and what it would write.</p>
    <p>
      It asks for the microphone. The sound stays on this device and is not kept, and nothing of the lesson is either.
    </p>
    <Sounds />
    <button type="button" className="main-button" onClick={start}>
      <Icon name="ear" />
      <span>Start the lesson</span>
    </button>
  </section>
)

export const LessonView = ({ session }: LessonProps) => {
  const [practice, setPractice] = useState<Session | null>(null)
  const seen = () => session.settings.change({ lessonSeen: true })
  const leave = () => {
    seen()
    window.location.hash = "jobs"
  }
  const start = () => {
    seen()
    void session.startLesson().then((lesson) => {
      lesson.resumeJob(practiceJob)
      setPractice(lesson)
    })
  }
  return (
    <main className="start lesson">
      <button type="button" className="back" onClick={leave}>
        <Icon name="back" />
        <span>{practice ? "End the lesson" : "Skip"}</span>
      </button>
      <h1>First lesson</h1>
      {practice ? <Practice session={practice} /> : <Welcome start={start} />}
    </main>
  )
}
