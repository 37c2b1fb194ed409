/** The ear and the voice of a session: half duplex as it comes, and with a headset, if the worker says so, speech interrupts. */
import type { Effect } from "../dialogue/Effect"
import type { Heard } from "../facts/Heard"
import type { EarState } from "../speech/Listener"
import { BargeIn } from "./BargeIn"
import { Ear } from "./Ear"
import { HalfDuplex } from "./HalfDuplex"
import type { Parts } from "./Parts"

export interface TalkHooks {
  changed(): void
  trouble(because: string): void
  heard(heard: Heard): void
  saying(words: string | null): void
}

/** How long after speech has ended its words are waited for, in ms: decoding takes a fifth of that. */
const wordsWithinMs = 800

const nothingButMe = "I keep hearing myself. You cannot interrupt me until the app is opened again."

export const createTalk = (parts: Parts, hooks: TalkHooks): { ear: Ear; voice: HalfDuplex } => {
  let cut: readonly Effect[] = []
  let state: EarState = "stopped"
  let settling: ReturnType<typeof setTimeout> | undefined
  const speak = (effects: readonly Effect[]) => void voice.speak(effects)
  const bargeIn = new BargeIn({
    silence: () => {
      cut = voice.interrupt()
    },
    isYes: (heard) => parts.tools.interpret(heard, {}).facts.some((fact) => fact.kind === "confirm"),
    resume: () => {
      const again = cut
      cut = []
      speak([{ do: "sound", sound: "sayAgain" }, ...again])
    },
    giveUp: () => speak([{ do: "say", words: nothingButMe }]),
  })
  const mayInterrupt = () => parts.settings.snapshot().headset && !bargeIn.isOff && ear.isOnly(parts.microphone)
  const followState = () => {
    state = ear.state
    if (!mayInterrupt()) return
    bargeIn.state(state, performance.now())
    clearTimeout(settling)
    settling = setTimeout(() => bargeIn.settle(), wordsWithinMs)
  }
  const ear = new Ear({
    changed: () => {
      if (ear.state !== state) followState()
      hooks.changed()
    },
    trouble: hooks.trouble,
    stumbled: (because) =>
      speak([
        { do: "sound", sound: "sayAgain" },
        { do: "say", words: because },
      ]),
    heard: (heard) => {
      const taken = mayInterrupt() ? bargeIn.take(heard) : heard
      if (taken) hooks.heard(taken)
      else parts.keeper?.forget(heard.id)
    },
    sound: (heard, sound) => parts.keeper?.hear(heard, sound),
  })
  const voice = new HalfDuplex(parts.speaker, {
    trouble: hooks.trouble,
    saying: (words) => {
      bargeIn.saying(words, performance.now())
      hooks.saying(words)
    },
    deafen: () => ear.deafen(),
    undeafen: (marginMs) => ear.undeafen(marginMs),
    mayInterrupt,
    loud: (on) => parts.speakLoud(on),
    soundFirst: () => parts.settings.snapshot().soundFirst,
  })
  parts.keeper?.watch((because) => {
    hooks.trouble(because)
    speak([{ do: "say", words: because }])
  })
  return { ear, voice }
}
