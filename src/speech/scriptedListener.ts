/**
 * A listener for tests and demonstrations: hears exactly what it is told to hear, and keeps every other rule of a
 * listener (nothing before the start, while deaf, within the margin, or after the stop).
 */
import { v7 } from "uuid"
import type { EarGrammar } from "../facts/EarGrammar"
import { Heard } from "../facts/Heard"
import { done, type Outcome, refuse } from "../facts/Outcome"
import type { EarState, Listener, ListenerEvents } from "./Listener"

export interface ScriptedListener extends Listener {
  /** Somebody says this now, at this second of the listening; a later second each time. */
  say(text: string, atSeconds?: number, more?: Partial<Heard>): void
  /** The microphone goes away. */
  fail(because: string): void
  readonly grammarId: string | null
}

export interface ScriptedListenerOptions {
  /** What `prepare` answers to a grammar; by default that it is ready. */
  prepares?: (grammar: EarGrammar) => Outcome
  starts?: Outcome
  newId?: () => string
}

/** Spoken words a second, for the length of an utterance. */
const wordsPerSecond = 2.5

export const createScriptedListener = (options: ScriptedListenerOptions = {}): ScriptedListener => {
  const { prepares = () => done(undefined), starts = done(undefined), newId = () => v7() } = options
  let events: ListenerEvents | null = null
  let grammarId: string | null = null
  let released = false
  let deaf = false
  let now = 0
  let audibleFrom = 0

  const show = (state: EarState) => events?.state?.(state)
  const end = () => {
    show("stopped")
    events = null
  }

  return {
    get grammarId() {
      return grammarId
    },
    prepare: async (grammar) => {
      if (released) return refuse("The ear has been put away.")
      const outcome = prepares(grammar)
      grammarId = outcome.ok ? grammar.id : null
      return outcome
    },
    start: async (listenerEvents) => {
      if (grammarId === null) return refuse("The ear is not ready.")
      if (!starts.ok) return starts
      events = listenerEvents
      deaf = false
      show("listening")
      return done(undefined)
    },
    say: (text, atSeconds = now, more = {}) => {
      const length = text.split(/\s+/).length / wordsPerSecond
      now = Math.max(now, atSeconds) + length
      if (!events || deaf || grammarId === null || now <= audibleFrom) return
      const utterance = { id: newId(), text, start: now - length, end: now, engine: "scripted", ...more }
      show("speech")
      events.heard(Heard.parse(utterance))
      show("listening")
    },
    fail: (because) => {
      events?.failed?.(because)
      end()
    },
    deafen: () => {
      deaf = true
      show("deaf")
    },
    undeafen: (marginMs) => {
      deaf = false
      audibleFrom = now + marginMs / 1000
      show("listening")
    },
    stop: async () => end(),
    release: async () => {
      released = true
      end()
      grammarId = null
    },
  }
}
