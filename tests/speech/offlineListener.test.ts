/** The browser's offline ear with a made-up worker and microphone: what is held back, and what goes wrong in words. */
import { expect, test } from "vitest"
import { done, type Outcome, refuse } from "../../src/facts/Outcome"
import type { FromWorker, ToWorker } from "../../src/speech/earMessages"
import type { EarWorker } from "../../src/speech/earWorkerClient"
import type { Microphone, MicrophoneEvents } from "../../src/speech/microphone"
import { createOfflineListener } from "../../src/speech/offlineListener"

const heard = (text: string) =>
  ({
    tell: "heard",
    heard: { id: text, text, alternatives: [], words: [], start: 0, end: 1, engine: "offline", margin: 2 },
  }) as FromWorker

const bench = async (opens?: Outcome<Microphone>) => {
  const got: string[] = []
  const marks: string[] = []
  let worker: EarWorker | null = null
  let microphone: MicrophoneEvents | null = null
  let closed = 0
  const makeWorker = () => {
    worker = {
      onmessage: null,
      onerror: null,
      terminate: () => {},
      postMessage: (message: ToWorker) => {
        if ("call" in message) tell({ tell: "answer", call: message.call, outcome: done(undefined) })
      },
    } as EarWorker
    return worker
  }
  const tell = (message: FromWorker) => worker!.onmessage?.call(worker as never, { data: message } as MessageEvent)
  const openMicrophone = async (events: MicrophoneEvents): Promise<Outcome<Microphone>> => {
    microphone = events
    const made = {
      mark: (mark: { mark: string }) => marks.push(mark.mark),
      close: async () => {
        closed += 1
      },
    }
    return opens ?? done(made)
  }
  const listener = createOfflineListener({ assets: "http://host/ear/", makeWorker, openMicrophone })
  await listener.prepare({ id: "g", jsgf: "", pronunciations: [] })
  const started = await listener.start({
    heard: (one) => got.push(one.text),
    failed: (because) => got.push(because),
    stumbled: (because) => got.push(because),
  })
  return {
    listener,
    started,
    tell,
    got,
    marks,
    closed: () => closed,
    microphone: () => microphone!,
    die: () => worker!.onerror!.call(worker as never, {} as ErrorEvent),
  }
}

test("what is heard is handed over", async () => {
  const { tell, got } = await bench()
  tell(heard("yes"))
  expect(got).toEqual(["yes"])
})

test("what comes out of the worker late, while the app speaks, waits until it is quiet", async () => {
  const { listener, tell, got, marks } = await bench()
  listener.deafen()
  tell(heard("sixteen square"))
  tell(heard("fourteen metres"))
  expect(got).toEqual([])
  listener.undeafen(300)
  expect(got).toEqual(["sixteen square", "fourteen metres"])
  expect(marks).toEqual(["deafen", "undeafen"])
})

test("a refused microphone is a refusal in words, and nothing is left open", async () => {
  const { started, tell, got, closed } = await bench(refuse("The microphone is not allowed."))
  expect(started).toEqual(refuse("The microphone is not allowed."))
  tell(heard("yes"))
  expect(got).toEqual([])
  expect(closed()).toBe(0)
})

test("a microphone that is lost for good is told in words", async () => {
  const { microphone, got } = await bench()
  microphone().lost("There is no microphone.")
  expect(got).toEqual(["There is no microphone."])
})

test("another microphone in the middle of the work is told in words, the first one is not", async () => {
  const { microphone, got } = await bench()
  microphone().port({} as MessagePort, false)
  expect(got).toEqual([])
  microphone().port({} as MessagePort, true)
  expect(got).toEqual(["The microphone has changed. Say that again."])
})

test("nothing is handed over after the stop, and the microphone is closed", async () => {
  const { listener, tell, got, closed } = await bench()
  await listener.stop()
  tell(heard("yes"))
  expect(got).toEqual([])
  expect(closed()).toBe(1)
})

test("after the worker died the ear goes on, says so, and takes a new port from the microphone", async () => {
  const { die, got, tell, closed } = await bench()
  die()
  await expect.poll(() => got).toEqual(["The ear stumbled. Say that again."])
  await expect.poll(closed).toBe(1)
  tell(heard("yes"))
  expect(got.at(-1)).toBe("yes")
})
