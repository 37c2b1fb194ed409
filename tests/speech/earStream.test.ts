/** From sound to utterances with a made-up recogniser: times, rates, and the half-duplex rule. */
import { describe, expect, test } from "vitest"
import { createEarStream, type UtteranceEar } from "../../src/speech/earStream"
import { join, rateHz, silence, word } from "./madeUpSound"

/** Hears one word, "yes", from 0.3 s to 0.6 s of whatever it is given. */
const ear = (): UtteranceEar & { given: number[] } => {
  const given: number[] = []
  return {
    given,
    rateHz,
    hear: (samples) => {
      given.push(samples.length / rateHz)
      return {
        text: "yes",
        alternatives: ["no"],
        words: [{ text: "yes", start: 0.3, end: 0.6, score: 1 }],
        margin: 1.5,
      }
    },
  }
}
const stream = (over: UtteranceEar = ear()) => {
  let ids = 0
  return createEarStream(over, () => `id${++ids}`)
}

test("an utterance carries its words with times from the start of the listening", () => {
  const one = stream()
  const found = one.push(join(silence(2), word(0.6), silence(2)), rateHz)
  expect(found).toHaveLength(1)
  const { heard, sound } = found[0]!
  expect(heard).toMatchObject({ id: "id1", text: "yes", alternatives: ["no"], engine: "offline", margin: 1.5 })
  expect(heard.start).toBeGreaterThan(1.7)
  expect(heard.start).toBeLessThan(2.2)
  expect(heard.words[0]!.end).toBe(heard.end)
  expect(sound.samples.length).toBeGreaterThan(0.6 * rateHz)
})

test("nothing is made up where the recogniser hears nothing", () => {
  expect(stream({ rateHz, hear: () => null }).push(join(silence(1), word(0.6), silence(2)), rateHz)).toEqual([])
})

test("sound of another rate is brought to the recogniser's", () => {
  const given = ear()
  const slow = join(silence(1), word(0.6), silence(2)).filter((_, n) => n % 2 === 0)
  expect(stream(given).push(slow, rateHz / 2)).toHaveLength(1)
  expect(given.given[0]).toBeGreaterThan(0.9)
  expect(given.given[0]).toBeLessThan(1.6)
})

test("when the rate changes within an utterance, that one is dropped and the next is right", () => {
  const one = stream()
  expect(one.push(join(silence(1), word(0.4)), rateHz)).toEqual([])
  expect(one.push(silence(2), 48_000)).toEqual([])
  expect(one.push(join(silence(1), word(0.6), silence(2)), rateHz)).toHaveLength(1)
})

describe("how long is waited for more", () => {
  /** How many seconds of quiet it takes until the answer comes. */
  const waits = (text: string, margin = 2) => {
    const hearing = { text, alternatives: [], words: [{ text, start: 0.3, end: 0.6, score: 1 }], margin }
    const one = stream({ rateHz, hear: () => hearing })
    one.push(join(silence(1), word(0.6)), rateHz)
    for (let hundredths = 0; ; hundredths++) if (one.push(silence(0.01), rateHz).length > 0) return hundredths / 100
  }

  test("a plain sentence is answered soon, a number may go on, and doubt is given time", () => {
    expect(waits("fitted")).toBeLessThan(0.65)
    expect(waits("five")).toBeGreaterThan(0.8)
    expect(waits("point")).toBeGreaterThan(0.8)
    expect(waits("fitted", 0.5)).toBeGreaterThan(0.8)
  })

  test("half a sentence is waited for longest, and what was heard at a pause is not decoded twice", () => {
    const given: number[] = []
    const hear = (samples: Float32Array) => {
      given.push(samples.length / rateHz)
      return given.length < 2 ? null : { text: "five", alternatives: [], words: [], margin: 2 }
    }
    const one = stream({ rateHz, hear })
    const found = one.push(join(silence(1), word(0.6), silence(1.15), word(0.6), silence(2)), rateHz)
    expect(found).toHaveLength(1)
    expect(given).toHaveLength(2)
    expect(found[0]!.sound.samples.length / rateHz).toBe(given[1])
  })
})

test("talk that is too long for any sentence is not decoded, and what follows it is heard", () => {
  const given = ear()
  const one = stream(given)
  const talk = join(...Array.from({ length: 20 }, () => join(word(0.9), silence(0.1))))
  expect(one.push(join(silence(1), talk, silence(2)), rateHz)).toEqual([])
  expect(given.given).toEqual([])
  expect(one.push(join(word(0.6), silence(2)), rateHz)).toHaveLength(1)
})

test("the end of the sound finishes an open utterance", () => {
  const one = stream()
  expect(one.push(join(silence(1), word(0.6)), rateHz)).toEqual([])
  expect(one.finish()).toHaveLength(1)
  expect(one.finish()).toEqual([])
})

describe("half duplex", () => {
  const quiet = silence(1)

  test("nothing said while deaf is heard, and speech that the app talks over is thrown away", () => {
    const one = stream()
    one.push(join(quiet, word(0.3)), rateHz)
    one.deafen()
    expect(one.push(join(word(0.6), silence(2), word(0.6), silence(2)), rateHz)).toEqual([])
    one.undeafen(300)
    expect(one.push(silence(2), rateHz)).toEqual([])
  })

  test("an echo that dies within the margin is thrown away", () => {
    const one = stream()
    one.push(quiet, rateHz)
    one.deafen()
    one.push(word(1), rateHz)
    one.undeafen(400)
    expect(one.push(join(word(0.2), silence(2)), rateHz)).toEqual([])
  })

  test("a reply that begins within the margin is heard from its first sound", () => {
    const given = ear()
    const one = stream(given)
    one.push(quiet, rateHz)
    one.deafen()
    one.push(word(1), rateHz)
    one.undeafen(400)
    expect(one.push(join(silence(0.15), word(0.9), silence(2)), rateHz)).toHaveLength(1)
    expect(given.given[0]).toBeGreaterThan(0.9 + 0.15)
  })

  test("none of the app's own voice is in what is kept", () => {
    const given = ear()
    const one = stream(given)
    one.push(quiet, rateHz)
    one.deafen()
    one.push(word(3), rateHz)
    one.undeafen(0)
    one.push(join(word(0.5), silence(2)), rateHz)
    expect(given.given[0]).toBeLessThan(1)
  })

  test("the first reply after the margin is heard, also right after a long deafness", () => {
    const one = stream()
    one.deafen()
    one.push(join(word(4), quiet), rateHz)
    one.undeafen(300)
    expect(one.push(join(silence(0.4), word(0.5), silence(2)), rateHz)).toHaveLength(1)
  })
})
