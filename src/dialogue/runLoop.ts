/** The whole loop over utterances that are all there already: a transcript, or what an ear made of a recording. */
import type { Heard } from "../facts/Heard"
import type { LogLine } from "../record/LogLine"
import type { DialogueEvent } from "./DialogueEvent"
import type { DialogueState } from "./DialogueState"
import { emptyDialogue } from "./emptyDialogue"
import { step } from "./step"
import type { Tools } from "./Tools"

/** One thing that happened, in order: what was heard, or what was said back. */
export type Exchange = { at: string; heard: string; understood: boolean } | { at: string; said: string }

export interface LoopRun {
  state: DialogueState
  lines: LogLine[]
  exchanges: Exchange[]
}

export interface LoopStart {
  job: string
  place: string
  pack: string
  device: string
  /** When the recording began, in milliseconds since 1970; the utterances' own seconds are added. */
  startMs: number
  /** Nobody heard what the loop says: no value is accepted by it. Left out, it runs as if the worker heard it now. */
  unheard?: boolean
}

/** Plays utterances through the loop, each at the moment it ended. */
export const runLoop = (heards: readonly Heard[], start: LoopStart, tools: Tools): LoopRun => {
  const run: LoopRun = {
    state: { ...emptyDialogue(start.device), unheard: start.unheard ?? false },
    lines: [],
    exchanges: [],
  }
  const take = (event: DialogueEvent): void => {
    const { state, effects } = step(run.state, event, tools)
    run.state = state
    for (const effect of effects) {
      if (effect.do === "append") run.lines.push(...effect.lines)
      if (effect.do === "say") run.exchanges.push({ at: event.at, said: effect.words })
    }
  }
  const atOf = (seconds: number) => new Date(start.startMs + Math.round(seconds * 1000)).toISOString()
  take({ type: "opened", at: atOf(0), job: start.job, place: start.place, pack: start.pack })
  for (const heard of heards) {
    const before = run.exchanges.length
    const at = atOf(heard.end)
    take({ type: "heard", at, heard })
    const understood = run.state.lastHeard?.understood ?? false
    run.exchanges.splice(before, 0, { at, heard: heard.text, understood })
  }
  return run
}
