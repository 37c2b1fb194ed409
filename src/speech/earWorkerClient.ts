/**
 * The page's end of the ear's worker: calls become messages and answers become promises. A worker that dies (its memory
 * never shrinks, and can run out) is replaced, and the voice, the grammar and the start are told to the new one.
 */
import type { EarGrammar } from "../facts/EarGrammar"
import { done, type Outcome, refuse } from "../facts/Outcome"
import type { FromWorker, ToWorker } from "./earMessages"
import type { WhoseVoice } from "./VoiceFit"

export interface EarWorkerEvents {
  message(message: Exclude<FromWorker, { tell: "answer" }>): void
  /** The worker died and a new one stands ready, listening if the old one was: it needs a port for the sound. */
  restarted(): void
  failed(because: string): void
}

export interface EarWorkerClient {
  /** Has the worker load its engine and model, so that the first grammar finds them there. */
  warm(): Promise<Outcome>
  prepare(grammar: EarGrammar): Promise<Outcome>
  start(): Promise<Outcome>
  stop(): Promise<Outcome>
  hear(port: MessagePort): void
  /** Whose voice it is, for this worker and those that take its place. */
  fitTo(voice: WhoseVoice): void
  end(): void
}

/** The part of a worker that is used, so that tests can stand in for it. */
export type EarWorker = Pick<Worker, "postMessage" | "terminate" | "onmessage" | "onerror">

/** Deaths in a row, with nothing heard between them, after which it is given up. */
const mostDeaths = 3

type Call =
  | { do: "warm"; base: string }
  | { do: "prepare"; base: string; grammar: EarGrammar }
  | { do: "start" }
  | { do: "stop" }

export const createEarWorkerClient = (
  makeWorker: () => EarWorker,
  base: string,
  events: EarWorkerEvents,
): EarWorkerClient => {
  let worker: EarWorker | null = null
  let calls = 0
  let deaths = 0
  let grammar: EarGrammar | null = null
  let started = false
  let voice: WhoseVoice = null
  const waiting = new Map<number, (outcome: Outcome) => void>()

  const ask = (message: Call): Promise<Outcome> => {
    worker ??= open()
    const call = ++calls
    const answer = new Promise<Outcome>((resolve) => waiting.set(call, resolve))
    worker.postMessage({ ...message, call } satisfies ToWorker)
    return answer
  }

  const open = (): EarWorker => {
    const made = makeWorker()
    made.onmessage = ({ data }: MessageEvent<FromWorker>) => {
      if (data.tell === "answer") {
        waiting.get(data.call)?.(data.outcome)
        waiting.delete(data.call)
        return
      }
      if (data.tell === "heard") deaths = 0
      events.message(data)
    }
    made.onerror = (error) => {
      error.preventDefault?.()
      if (made === worker) void replace()
    }
    if (voice) made.postMessage({ do: "fit", voice } satisfies ToWorker)
    return made
  }

  const replace = async () => {
    worker?.terminate()
    worker = null
    for (const resolve of waiting.values()) resolve(refuse("The ear had to be restarted."))
    waiting.clear()
    if (!grammar || !started) return
    if (++deaths > mostDeaths) return events.failed("The offline ear keeps stopping. Open the page again.")
    const ready = await ask({ do: "prepare", base, grammar })
    const listening = ready.ok ? await ask({ do: "start" }) : ready
    if (!listening.ok) return events.failed(listening.because)
    events.restarted()
  }

  return {
    warm: () => ask({ do: "warm", base }),
    prepare: async (next) => {
      const outcome = await ask({ do: "prepare", base, grammar: next })
      grammar = outcome.ok ? next : null
      return outcome
    },
    start: async () => {
      const outcome = await ask({ do: "start" })
      started = outcome.ok
      return outcome
    },
    stop: async () => {
      started = false
      return worker ? ask({ do: "stop" }) : done(undefined)
    },
    fitTo: (next) => {
      voice = next
      worker?.postMessage({ do: "fit", voice } satisfies ToWorker)
    },
    hear: (port) => worker?.postMessage({ do: "hear", port } satisfies ToWorker, [port]),
    end: () => {
      started = false
      worker?.terminate()
      worker = null
      for (const resolve of waiting.values()) resolve(refuse("The ear has been put away."))
      waiting.clear()
    },
  }
}
