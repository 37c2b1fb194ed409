/**
 * Check-ins for somebody who works alone, as a machine driven only by the times that events carry. It is a reminder and
 * no safety device: it hears nothing while the page is shut, and it cannot send anything by itself.
 */

/** How long a question may go unanswered before it is asked again louder, and then before the alarm. */
export const answerWithinMs = 30_000

export interface LoneWorker {
  /** Null while check-ins are off, which they are until the worker sets them. */
  everyMinutes: number | null
  /** `resting`: until `until` nothing is asked. `asked`, `asked_again`: the question stands. `alarm`: nobody answered. */
  phase: "off" | "resting" | "asked" | "asked_again" | "alarm"
  /** When the next thing happens unless the worker is heard: ISO time; null while off and once the alarm is on. */
  until: string | null
}

export const notChecked: LoneWorker = { everyMinutes: null, phase: "off", until: null }

/** What a tick brings: nothing yet, the question, the question again louder, or the alarm. */
export type CheckInTurn = "none" | "ask" | "ask_again" | "alarm"

/** The same moment that many milliseconds later, in UTC. */
const later = (at: string, ms: number): string => new Date(Date.parse(at) + ms).toISOString()

/** Sets the interval and starts it. */
export const startChecks = (everyMinutes: number, at: string): LoneWorker => ({
  everyMinutes,
  phase: "resting",
  until: later(at, everyMinutes * 60_000),
})

/** A sign of life: the interval starts again. Nothing changes while check-ins are off. */
export const heardFrom = (worker: LoneWorker, at: string): LoneWorker =>
  worker.everyMinutes === null ? worker : startChecks(worker.everyMinutes, at)

/** Whether a question of a check-in stands open, or its alarm is on. */
export const isOverdue = ({ phase }: LoneWorker): boolean =>
  phase === "asked" || phase === "asked_again" || phase === "alarm"

/** What the passing of time brings. */
export const passTime = (worker: LoneWorker, at: string): { worker: LoneWorker; turn: CheckInTurn } => {
  const { phase, until, everyMinutes } = worker
  if (until === null || everyMinutes === null) return { worker, turn: "none" }
  const leftMs = Date.parse(until) - Date.parse(at)
  // A clock that was put back would hold the question off for hours: never longer than the phase lasts at most.
  const mostMs = phase === "resting" ? everyMinutes * 60_000 : answerWithinMs
  if (leftMs > mostMs) return { worker: { ...worker, until: later(at, mostMs) }, turn: "none" }
  if (leftMs > 0) return { worker, turn: "none" }
  if (phase === "resting")
    return { worker: { ...worker, phase: "asked", until: later(at, answerWithinMs) }, turn: "ask" }
  if (phase === "asked")
    return { worker: { ...worker, phase: "asked_again", until: later(at, answerWithinMs) }, turn: "ask_again" }
  return { worker: { ...worker, phase: "alarm", until: null }, turn: "alarm" }
}

/** Milliseconds until the loop should be told that time has passed (`ticked`), or null while nothing is due. */
export const tickInMs = ({ until }: LoneWorker, at: string): number | null =>
  until === null ? null : Math.max(0, Date.parse(until) - Date.parse(at))
