/** Files in a row: progress, stopping without a trace, going on, and a worker that dies. */
import { expect, test, vi } from "vitest"
import { TakeIn, type Taker } from "../../../../src/app/office/takeIn/TakeIn"
import { refusedFile } from "../../../../src/app/office/takeIn/TakenFile"
import type { FromTaker, ToTaker } from "../../../../src/app/office/takeIn/takeInMessages"
import { refuse } from "../../../../src/facts/Outcome"

/** Workers that do nothing until they are told to. */
const createTakers = () => {
  const asked: string[] = []
  const takers: Taker[] = []
  let ended = 0
  const makeTaker = (): Taker => {
    const taker: Taker = {
      postMessage: (message: ToTaker) => void asked.push(message.name),
      terminate: () => void ended++,
      onmessage: null,
      onerror: null,
    }
    takers.push(taker)
    return taker
  }
  const tell = (message: FromTaker) =>
    takers.at(-1)!.onmessage!.call({} as Worker, { data: message } as MessageEvent<FromTaker>)
  const finish = async (name: string) => {
    tell({ tell: "taken", taken: [refusedFile(name, "done")] })
    await Promise.resolve()
    await Promise.resolve()
  }
  return { asked, takers, makeTaker, tell, finish, ended: () => ended }
}

const named = (...names: string[]) => names.map((name) => ({ name, file: new File(["x"], name) }))
const open = () => {
  const takers = createTakers()
  const added = vi.fn()
  const decode = vi.fn(async () => refuse("this browser cannot decode it"))
  const dropped = vi.fn()
  const keep = () => ({ sound: false, opus: false })
  const takeIn = new TakeIn({ makeTaker: takers.makeTaker, decode, ear: "", keep, added, dropped })
  return { takers, added, dropped, decode, takeIn }
}
const untilAsked = (asked: readonly string[], count: number) => vi.waitFor(() => expect(asked).toHaveLength(count))

test("one file after the other, with how far it is, and one list at the end", async () => {
  const { takers, takeIn, added } = open()
  takeIn.add(named("a.vtt", "b.vtt"))
  await untilAsked(takers.asked, 1)
  takers.tell({ tell: "part", part: 0.5 })
  expect(takeIn.snapshot()).toMatchObject({ state: "working", now: { name: "a.vtt", part: 0.5 }, waiting: 1 })
  await takers.finish("a.vtt")
  await untilAsked(takers.asked, 2)
  await takers.finish("b.vtt")
  await vi.waitFor(() => expect(takeIn.snapshot().state).toBe("idle"))
  expect(takeIn.snapshot().taken.map((one) => one.file)).toEqual(["a.vtt", "b.vtt"])
  expect(added).toHaveBeenCalledTimes(1)
  expect(takers.takers).toHaveLength(1)
})

test("sound that gave way to lines is passed on to be said", async () => {
  const { takers, takeIn, dropped } = open()
  takeIn.add(named("a.wav"))
  await untilAsked(takers.asked, 1)
  takers.tell({ tell: "dropped", clips: 3 })
  expect(dropped).toHaveBeenCalledWith(3)
  expect(takeIn.snapshot().now).toEqual({ name: "a.wav", part: 0 })
  await takers.finish("a.wav")
})

test("stopping ends the worker, and going on begins with the file that was in hand", async () => {
  const { takers, takeIn } = open()
  takeIn.add(named("a.vtt", "b.vtt", "c.vtt"))
  await untilAsked(takers.asked, 1)
  await takers.finish("a.vtt")
  await untilAsked(takers.asked, 2)
  takeIn.stop()
  expect(takers.ended()).toBe(1)
  expect(takeIn.snapshot()).toMatchObject({ state: "stopped", now: null, waiting: 2 })
  takeIn.goOn()
  await untilAsked(takers.asked, 3)
  expect(takers.asked).toEqual(["a.vtt", "b.vtt", "b.vtt"])
  expect(takers.takers).toHaveLength(2)
})

test("a worker that dies costs its file alone", async () => {
  const { takers, takeIn } = open()
  takeIn.add(named("huge.wav", "b.vtt"))
  await untilAsked(takers.asked, 1)
  takers.takers[0]!.onerror!.call({} as Worker, new Event("error") as ErrorEvent)
  await untilAsked(takers.asked, 2)
  await takers.finish("b.vtt")
  await vi.waitFor(() => expect(takeIn.snapshot().state).toBe("idle"))
  expect(takeIn.snapshot().taken.map((one) => [one.file, one.words])).toEqual([
    ["huge.wav", expect.stringContaining("too much")],
    ["b.vtt", "done"],
  ])
})

test("only recordings that are no WAV files are decoded by the browser", async () => {
  const { takers, takeIn, decode } = open()
  takeIn.add(named("a.wav", "b.m4a"))
  await untilAsked(takers.asked, 1)
  expect(decode).not.toHaveBeenCalled()
  await takers.finish("a.wav")
  await untilAsked(takers.asked, 2)
  expect(decode).toHaveBeenCalledTimes(1)
})
