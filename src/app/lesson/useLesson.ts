/** Where the lesson stands: says what to repeat once the app has fallen silent, and goes on when it was understood. */
import { useEffect, useState } from "react"
import type { Session, SessionView } from "../Session"
import { type LessonStep, lessonSteps } from "./lessonSteps"

/** Time to hear the read-back out before the next step. */
const breathMs = 1200

export interface Lesson {
  /** Null once all of it is done. */
  step: LessonStep | null
  /** From 1. */
  number: number
  skip(): void
}

export const useLesson = (view: SessionView, session: Session): Lesson => {
  const [index, setIndex] = useState(0)
  const [promptedAt, setPromptedAt] = useState(-1)
  const step = lessonSteps[index] ?? null
  const quiet = view.voice.saying === null && view.phase === "job"
  const isDone = step?.isDone(view.dialogue) ?? false

  useEffect(() => {
    if (!quiet || promptedAt === index || isDone) return
    setPromptedAt(index)
    session.prompt(step ? `${step.lead} ${step.words}.` : "That is all. You are ready for a job.")
  }, [quiet, promptedAt, index, isDone, session, step])

  useEffect(() => {
    if (!isDone || !quiet) return
    const timer = setTimeout(() => setIndex(index + 1), breathMs)
    return () => clearTimeout(timer)
  }, [isDone, quiet, index])

  return { step, number: index + 1, skip: () => setIndex(index + 1) }
}
