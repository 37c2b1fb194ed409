/**
 * What every ear keeps to, whatever it hears with. Each ear brings its own way of being spoken to; sentences are "yes",
 * "no" and "water bond sixteen square".
 */
import { beforeEach, describe, expect, test } from "vitest"
import type { EarGrammar } from "../../src/facts/EarGrammar"
import { Heard } from "../../src/facts/Heard"
import type { EarState, Listener } from "../../src/speech/Listener"

export interface ListenerUnderTest {
  listener: Listener
  /** Somebody says this, and is silent for two seconds after it. */
  say(text: "yes" | "no" | "water bond sixteen square"): void | Promise<void>
  /** Nobody says anything for so long. */
  pause(seconds: number): void | Promise<void>
}

const jsgf = `#JSGF V1.0;
grammar contract;
public <said> = yes | no | water bond sixteen square;
`
const grammar: EarGrammar = { id: "contract", jsgf, pronunciations: [] }
/** A word that no ear knows how to say. */
const unsayable: EarGrammar = { id: "unsayable", jsgf: jsgf.replace("yes", "xyzzyplugh"), pronunciations: [] }

export const describeListener = (name: string, make: () => Promise<ListenerUnderTest>) =>
  describe(`${name} keeps the contract of an ear`, () => {
    let ear: ListenerUnderTest
    let heard: Heard[]
    let states: EarState[]
    const texts = () => heard.map((one) => one.text)
    const start = () => ear.listener.start({ heard: (one) => heard.push(one), state: (state) => states.push(state) })

    beforeEach(async () => {
      ear = await make()
      heard = []
      states = []
    })

    const begin = async () => {
      expect(await ear.listener.prepare(grammar)).toMatchObject({ ok: true })
      expect(await start()).toMatchObject({ ok: true })
      await ear.pause(1)
    }

    test("it does not start before it has a grammar", async () => {
      expect(await start()).toMatchObject({ ok: false })
      await ear.say("yes")
      expect(heard).toEqual([])
    })

    test("each utterance is handed over once, in order, well formed, with its place in time", async () => {
      await begin()
      for (const text of ["yes", "water bond sixteen square", "no"] as const) await ear.say(text)
      expect(texts()).toEqual(["yes", "water bond sixteen square", "no"])
      for (const one of heard) expect(Heard.parse(one)).toEqual(one)
      expect(new Set(heard.map((one) => one.id)).size).toBe(3)
      const times = heard.flatMap((one) => [one.start, one.end])
      expect(times).toEqual([...times].sort((a, b) => a - b))
      expect(heard.every((one) => one.end > one.start)).toBe(true)
    })

    test("silence is no utterance", async () => {
      await begin()
      await ear.pause(10)
      expect(heard).toEqual([])
    })

    test("while deaf nothing is handed over, and the first word after the margin is not lost", async () => {
      await begin()
      ear.listener.deafen()
      await ear.say("no")
      ear.listener.undeafen(300)
      expect(texts()).toEqual([])
      await ear.pause(0.5)
      await ear.say("yes")
      expect(texts()).toEqual(["yes"])
    })

    test("after the stop nothing is handed over; it can be started again", async () => {
      await begin()
      await ear.listener.stop()
      await ear.say("yes")
      expect(texts()).toEqual([])
      expect(await start()).toMatchObject({ ok: true })
      await ear.pause(1)
      await ear.say("no")
      expect(texts()).toEqual(["no"])
    })

    test("a refused grammar leaves it hearing nothing, and a good one mends it", async () => {
      await begin()
      const refused = await ear.listener.prepare(unsayable)
      expect(refused).toMatchObject({ ok: false, because: expect.stringMatching(/^[A-Z].*\.$/) })
      await ear.say("no")
      expect(texts()).toEqual([])
      expect(await ear.listener.prepare(grammar)).toMatchObject({ ok: true })
      await ear.say("yes")
      expect(texts()).toEqual(["yes"])
    })

    test("it says what it is doing", async () => {
      await begin()
      await ear.say("yes")
      ear.listener.deafen()
      ear.listener.undeafen(0)
      await ear.listener.stop()
      expect(states[0]).toBe("listening")
      expect(states).toContain("speech")
      expect(states.indexOf("deaf")).toBeGreaterThan(states.indexOf("speech"))
      expect(states.at(-1)).toBe("stopped")
      expect(states.filter((state, n) => state === states[n - 1])).toEqual([])
    })

    test("released, it is gone for good", async () => {
      await begin()
      await ear.listener.release()
      await ear.say("yes")
      expect(texts()).toEqual([])
      expect(await ear.listener.prepare(grammar)).toMatchObject({ ok: false })
    })
  })
