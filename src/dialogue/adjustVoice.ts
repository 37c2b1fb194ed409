/** Louder, slower, shorter: how the worker is spoken to. Each wish is answered in the new way, and kept by the app. */
import type { Command } from "../facts/Interpretation"
import { mostSteps, type Preferences, type Verbosity } from "./Preferences"
import type { Turn } from "./Turn"

type Turned = Extract<Command["kind"], "louder" | "quieter" | "slower" | "faster">

/** The answers must not hold the wish itself: an app that hears itself would turn on and on. */
const knobs: Readonly<Record<Turned, { knob: "volumeStep" | "rateStep"; by: 1 | -1; done: string; end: string }>> = {
  louder: { knob: "volumeStep", by: 1, done: "That is a step more.", end: "There is no more in me." },
  quieter: { knob: "volumeStep", by: -1, done: "That is a step less.", end: "There is no less in me." },
  slower: { knob: "rateStep", by: -1, done: "From here on with more time.", end: "There is no less in me." },
  faster: { knob: "rateStep", by: 1, done: "From here on with less time.", end: "There is no more in me." },
}

const modes: Readonly<Record<Verbosity, string>> = {
  full: "I read back everything.",
  short: "I read back in few words. A sound alone is a step taken down. Readings and warnings stay whole.",
  warnings: "A sound alone is a value taken down. Readings, doubts and warnings stay whole.",
}

const prefer = (turn: Turn, preferences: Preferences): void => {
  turn.set({ preferences })
  turn.prefer(preferences)
}

export const turnVoice = (turn: Turn, wish: Turned): void => {
  const { knob, by, done, end } = knobs[wish]
  const step = turn.state.preferences[knob] + by
  if (Math.abs(step) > mostSteps) return turn.say(end)
  prefer(turn, { ...turn.state.preferences, [knob]: step })
  turn.say(done)
}

export const setVerbosity = (turn: Turn, verbosity: Verbosity): void => {
  prefer(turn, { ...turn.state.preferences, verbosity })
  turn.say(modes[verbosity])
}
