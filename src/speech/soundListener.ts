/**
 * A listener that is fed with sound instead of owning a microphone: the offline ear itself. The browser runs it in a
 * worker, the command line feeds it files, and the contract of all listeners is tested on it.
 */
import { v7 } from "uuid"
import { done, type Outcome, refuse } from "../facts/Outcome"
import { createEarStream, type EarStream, type HeardSound } from "./earStream"
import type { EarState, Listener, ListenerEvents } from "./Listener"
import type { Recogniser } from "./recogniser"
import type { WhoseVoice } from "./VoiceFit"

export interface SoundListener extends Listener {
  /** Loads the engine and its model ahead of the first grammar; loaded already, it answers at once. */
  warm(): Promise<Outcome>
  /** Whose voice it hears from now on. */
  fitTo(voice: WhoseVoice): void
  /** The next samples, -1 to 1, one channel, at the rate they have. */
  feed(samples: Float32Array, rateHz: number): void
  /** The sound has ended: hands over what was still open. */
  finish(): void
}

export interface SoundListenerOptions {
  /** Called once, at the first `warm` or `prepare`, and again only where it refused. */
  load(): Promise<Outcome<Recogniser>>
  newId?: () => string
}

/** How often the level is told, in seconds of sound. */
const levelEvery = 0.2

export const createSoundListener = ({ load, newId = () => v7() }: SoundListenerOptions): SoundListener => {
  let recogniser: Recogniser | null = null
  let voice: WhoseVoice = null
  let loading: Promise<Outcome<Recogniser>> | null = null
  let stream: EarStream | null = null
  let events: ListenerEvents | null = null
  let state: EarState = "stopped"
  let sinceLevel = 0
  let released = false

  const show = (next: EarState) => {
    if (next === state) return
    state = next
    events?.state?.(next)
  }
  const showStream = () => {
    if (stream) show(stream.deaf ? "deaf" : stream.inSpeech ? "speech" : "listening")
  }
  const handOver = (found: HeardSound[]) => {
    for (const one of found) {
      events?.sound?.(one.heard.id, one.sound)
      if (one.fit) events?.fit?.(one.heard.id, one.fit)
      events?.heard(one.heard)
    }
  }

  /** A second call while the first is loading waits for the same engine: each would hold its memory for good. */
  const ready = async (): Promise<Outcome<Recogniser>> => {
    if (recogniser) return done(recogniser)
    loading ??= load()
    const loaded = await loading
    loading = null
    if (loaded.ok && !released) {
      recogniser = loaded.value
      recogniser.fitTo(voice)
    }
    return loaded
  }

  return {
    warm: async () => {
      const loaded = await ready()
      return loaded.ok ? done(undefined) : loaded
    },
    fitTo: (next) => {
      voice = next
      recogniser?.fitTo(next)
    },
    prepare: async (grammar) => {
      if (released) return refuse("The ear has been put away.")
      const loaded = await ready()
      return loaded.ok ? loaded.value.take(grammar) : loaded
    },
    start: async (listenerEvents) => {
      if (!recogniser || released) return refuse("The ear is not ready.")
      events = listenerEvents
      stream = createEarStream(recogniser, newId)
      showStream()
      return done(undefined)
    },
    feed: (samples, rateHz) => {
      if (!stream) return
      const found = stream.push(samples, rateHz)
      sinceLevel += samples.length / rateHz
      if (sinceLevel >= levelEvery) {
        sinceLevel = 0
        events?.level?.(stream.level)
      }
      showStream()
      handOver(found)
    },
    finish: () => {
      if (stream) handOver(stream.finish())
      showStream()
    },
    deafen: () => {
      stream?.deafen()
      showStream()
    },
    undeafen: (marginMs) => {
      stream?.undeafen(marginMs)
      showStream()
    },
    stop: async () => {
      stream = null
      show("stopped")
      events = null
    },
    release: async () => {
      released = true
      stream = null
      show("stopped")
      events = null
      recogniser = null
    },
  }
}
