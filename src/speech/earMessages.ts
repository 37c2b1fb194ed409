/** What the page, the microphone's worklet and the ear's worker say to each other. */
import type { EarGrammar } from "../facts/EarGrammar"
import type { Heard } from "../facts/Heard"
import type { Outcome } from "../facts/Outcome"
import type { EarState, UtteranceSound } from "./Listener"
import type { Fit } from "./measureFit"
import type { WhoseVoice } from "./VoiceFit"

/** Page to worker. `call` numbers a question, so that its answer finds back. */
export type ToWorker =
  | { do: "warm"; call: number; base: string }
  | { do: "prepare"; call: number; base: string; grammar: EarGrammar }
  | { do: "start"; call: number }
  | { do: "stop"; call: number }
  /** A new microphone: its sound arrives at this port from now on. */
  | { do: "hear"; port: MessagePort }
  /** Whose voice it is, from the next utterance on. */
  | { do: "fit"; voice: WhoseVoice }

/** Worker to page. */
export type FromWorker =
  | { tell: "answer"; call: number; outcome: Outcome }
  | { tell: "heard"; heard: Heard }
  | { tell: "sound"; id: string; sound: UtteranceSound }
  | { tell: "fit"; id: string; fit: Fit }
  | { tell: "state"; state: EarState }
  | { tell: "level"; level: number }

/**
 * Worklet to worker. The marks of deafness travel in the sound itself, so that they fall on the right sample however far
 * behind the worker is.
 */
export type FromWorklet =
  | { sound: Float32Array; rateHz: number }
  | { mark: "deafen" }
  | { mark: "undeafen"; marginMs: number }

/** Page to worklet. */
export type ToWorklet = { port: MessagePort } | { mark: "deafen" } | { mark: "undeafen"; marginMs: number }

/** The name that the worklet registers under. */
export const workletName = "bothhands-microphone"
