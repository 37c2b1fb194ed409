/** The ear's own loading: once, however many ask for it, since each engine holds its memory for good. */
import { expect, test } from "vitest"
import { done, type Outcome, refuse } from "../../src/facts/Outcome"
import type { Recogniser } from "../../src/speech/recogniser"
import { createSoundListener } from "../../src/speech/soundListener"

const grammar = { id: "g", jsgf: "", pronunciations: [] }
const recogniser: Recogniser = {
  rateHz: 16_000,
  take: () => done(undefined),
  hear: () => null,
  fitTo: () => {},
  startAnew: () => {},
  weigh: () => null,
}

const bench = (answers: Outcome<Recogniser>[]) => {
  let loads = 0
  const load = async () => answers[loads++] ?? refuse("loaded too often")
  return { listener: createSoundListener({ load }), loads: () => loads }
}

test("warmed and then prepared, it loads one engine", async () => {
  const { listener, loads } = bench([done(recogniser)])
  expect(await listener.warm()).toMatchObject({ ok: true })
  expect(await listener.prepare(grammar)).toMatchObject({ ok: true })
  expect(loads()).toBe(1)
})

test("a grammar that comes while it is loading waits for that engine", async () => {
  const { listener, loads } = bench([done(recogniser)])
  const all = await Promise.all([listener.warm(), listener.prepare(grammar), listener.prepare(grammar)])
  expect(all.map((one) => one.ok)).toEqual([true, true, true])
  expect(loads()).toBe(1)
})

test("what could not be loaded is tried again", async () => {
  const { listener, loads } = bench([refuse("no network"), done(recogniser)])
  expect(await listener.warm()).toMatchObject({ because: "no network" })
  expect(await listener.prepare(grammar)).toMatchObject({ ok: true })
  expect(loads()).toBe(2)
})

test("whose voice it is, is told to the engine whenever it comes", async () => {
  const told: unknown[] = []
  const voice = { v: 1, ease: 0.4, prompts: 20 } as const
  const { listener } = bench([done({ ...recogniser, fitTo: (one) => void told.push(one) })])
  listener.fitTo(voice)
  await listener.prepare(grammar)
  listener.fitTo(null)
  expect(told).toEqual([voice, null])
})
