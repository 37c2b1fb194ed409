/** The page's end of the worker: answers find back, and a dead worker is replaced without the page noticing much. */
import { expect, test } from "vitest"
import { done } from "../../src/facts/Outcome"
import type { FromWorker, ToWorker } from "../../src/speech/earMessages"
import { createEarWorkerClient, type EarWorker } from "../../src/speech/earWorkerClient"

class FakeWorker implements EarWorker {
  onmessage: EarWorker["onmessage"] = null
  onerror: EarWorker["onerror"] = null
  asked: ToWorker[] = []
  ended = false
  constructor(private readonly answers: boolean) {}
  postMessage(message: ToWorker) {
    this.asked.push(message)
    if (this.answers && "call" in message) this.tell({ tell: "answer", call: message.call, outcome: done(undefined) })
  }
  terminate() {
    this.ended = true
  }
  tell(message: FromWorker) {
    this.onmessage?.call(this as never, { data: message } as MessageEvent)
  }
  die() {
    this.onerror?.call(this as never, {} as ErrorEvent)
  }
}

const grammar = { id: "g", jsgf: "", pronunciations: [] }
const bench = (answers = true) => {
  const workers: FakeWorker[] = []
  const told: string[] = []
  const makeWorker = () => {
    const worker = new FakeWorker(answers)
    workers.push(worker)
    return worker
  }
  const client = createEarWorkerClient(makeWorker, "http://pack/", {
    message: (message) => told.push(message.tell),
    restarted: () => told.push("restarted"),
    failed: (because) => told.push(because),
  })
  return { client, workers, told }
}
const settled = () =>
  new Promise<void>((resolve) => queueMicrotask(() => queueMicrotask(() => queueMicrotask(resolve))))

test("nothing is started before it is needed, and one worker serves all", async () => {
  const { client, workers } = bench()
  expect(workers).toHaveLength(0)
  expect(await client.prepare(grammar)).toMatchObject({ ok: true })
  expect(await client.start()).toMatchObject({ ok: true })
  expect(workers).toHaveLength(1)
  expect(workers[0]!.asked.map((one) => one.do)).toEqual(["prepare", "start"])
})

test("answers that come in another order find their questions", async () => {
  const { client, workers } = bench(false)
  const [first, second] = [client.prepare(grammar), client.prepare({ ...grammar, id: "h" })]
  const [one, two] = workers[0]!.asked as { call: number }[]
  workers[0]!.tell({ tell: "answer", call: two!.call, outcome: { ok: false, because: "second" } })
  workers[0]!.tell({ tell: "answer", call: one!.call, outcome: { ok: false, because: "first" } })
  expect([await first, await second]).toMatchObject([{ because: "first" }, { because: "second" }])
})

test("a worker that dies while listening is replaced, prepared and started", async () => {
  const { client, workers, told } = bench()
  await client.prepare(grammar)
  await client.start()
  workers[0]!.die()
  for (let n = 0; n < 5; n++) await settled()
  expect(workers[0]!.ended).toBe(true)
  expect(workers[1]!.asked.map((one) => one.do)).toEqual(["prepare", "start"])
  expect(told).toEqual(["restarted"])
})

test("an unanswered question is answered when the worker dies", async () => {
  const { client, workers } = bench(false)
  const asked = client.prepare(grammar)
  workers[0]!.die()
  expect(await asked).toMatchObject({ ok: false })
})

test("a worker that dies again and again is given up, in words", async () => {
  const { client, workers, told } = bench()
  await client.prepare(grammar)
  await client.start()
  for (let n = 0; n < 4; n++) {
    workers.at(-1)!.die()
    for (let k = 0; k < 5; k++) await settled()
  }
  expect(told).toEqual(["restarted", "restarted", "restarted", "The offline ear keeps stopping. Open the page again."])
})

test("something heard in between wipes the slate clean", async () => {
  const { client, workers, told } = bench()
  await client.prepare(grammar)
  await client.start()
  for (let n = 0; n < 6; n++) {
    workers.at(-1)!.die()
    for (let k = 0; k < 5; k++) await settled()
    workers.at(-1)!.tell({ tell: "heard", heard: {} as never })
  }
  expect(told.filter((one) => one === "restarted")).toHaveLength(6)
})

test("warming has the worker load, and nothing else", async () => {
  const { client, workers } = bench()
  expect(await client.warm()).toMatchObject({ ok: true })
  expect(workers[0]!.asked).toMatchObject([{ do: "warm", base: "http://pack/" }])
})

test("whose voice it is reaches a worker that is made later, and the one that takes its place", async () => {
  const { client, workers } = bench()
  const voice = { v: 1, ease: 0.4, prompts: 20 } as const
  client.fitTo(voice)
  expect(workers).toHaveLength(0)
  await client.prepare(grammar)
  await client.start()
  workers[0]!.die()
  for (let n = 0; n < 5; n++) await settled()
  for (const worker of workers) expect(worker.asked[0]).toEqual({ do: "fit", voice })
  client.fitTo(null)
  expect(workers[1]!.asked.at(-1)).toEqual({ do: "fit", voice: null })
})
