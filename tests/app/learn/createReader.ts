/** A worker who reads prompts to a scripted ear: for tests and pictures of the screen that learns a voice. */
import { grammarOfPrompt } from "../../../src/app/learn/grammarOfPrompt"
import { Learner } from "../../../src/app/learn/Learner"
import type { SettingsKeeper } from "../../../src/app/settings/SettingsKeeper"
import type { ListenerEvents } from "../../../src/speech/Listener"
import { createScriptedListener, type ScriptedListenerOptions } from "../../../src/speech/scriptedListener"
import type { WhoseVoice } from "../../../src/speech/VoiceFit"

export interface Reader {
  learner: Learner
  /** Says this; it falls short of the best sound by so many nats a frame. */
  read(text: string, short?: number): void
  /** Says something that the ear takes for no sentence. */
  mumble(): void
  /** Lets all that was put off happen. */
  wait(): void
  /** Whose voice the ear was told that it hears, in order. */
  readonly voices: WhoseVoice[]
  readonly grammars: string[]
  readonly isListening: boolean
}

export const createReader = (settings: SettingsKeeper, options: ScriptedListenerOptions = {}): Reader => {
  const ear = createScriptedListener(options)
  const [voices, grammars]: [WhoseVoice[], string[]] = [[], []]
  let later: (() => void)[] = []
  let events: ListenerEvents | null = null
  let count = 0
  const learner = new Learner({
    ear: {
      prepare: (grammar) => {
        grammars.push(grammar.id)
        return ear.prepare(grammar)
      },
      start: (given) => {
        events = given
        return ear.start(given)
      },
      stop: async () => {
        events = null
        await ear.stop()
      },
      fitTo: (voice) => void voices.push(voice),
    },
    grammarOf: (sentence) => grammarOfPrompt(sentence, { id: "whole", jsgf: "", pronunciations: [] }),
    settings,
    later: (act) => void later.push(act),
  })
  return {
    learner,
    read: (text, short = 0) => {
      const id = `read-${++count}`
      events?.state?.("speech")
      events?.state?.("listening")
      events?.fit?.(id, { worstWord: -short, whole: -4, hidden: 0, shortestNumber: null, noise: 0, wavers: false })
      ear.say(text, count * 10, { id })
    },
    mumble: () => {
      events?.state?.("speech")
      events?.state?.("listening")
    },
    wait: () => {
      const due = later
      later = []
      for (const act of due) act()
    },
    voices,
    grammars,
    get isListening() {
      return events !== null
    },
  }
}
