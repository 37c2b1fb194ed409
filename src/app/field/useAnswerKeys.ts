/**
 * Answers by single keys: y, n, u, r. They are left alone while a field has the focus or a modifier is held, so that
 * nothing typed is ever taken for an answer.
 */
import { useEffect } from "react"
import type { Answer } from "../../facts/Fact"
import type { Session } from "../Session"

const acts: Partial<Record<string, Answer>> = {
  y: { kind: "confirm", value: true },
  n: { kind: "deny", value: true },
  u: { kind: "undo", value: true },
  r: { kind: "repeat", value: true },
}

/** What the keys do, for the list on the screen. */
export const answerKeys = [
  ["Y", "yes"],
  ["N", "no"],
  ["U", "undo"],
  ["R", "say again"],
] as const

const isField = (target: EventTarget | null) =>
  target instanceof Element && target.closest("input, textarea, select, [contenteditable]") !== null

/** Listens for the keys while `on`. */
export const useAnswerKeys = (session: Session, on: boolean): void => {
  useEffect(() => {
    if (!on) return
    const press = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.altKey || event.metaKey || event.repeat || isField(event.target)) return
      const act = acts[event.key.toLowerCase()]
      if (!act) return
      event.preventDefault()
      session.send({ type: "tapped", act })
    }
    window.addEventListener("keydown", press)
    return () => window.removeEventListener("keydown", press)
  }, [session, on])
}
