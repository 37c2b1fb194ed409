/** Where utterances start and end, on sounds whose words lie at known places. */
import { describe, expect, test } from "vitest"
import { createEndpointer, endpointerSettings } from "../../src/speech/endpointer"
import { hiss, hum, join, mix, rateHz, silence, word } from "./madeUpSound"

const find = (sound: Float32Array, pieceLength = 160) => {
  const endpointer = createEndpointer(rateHz)
  const found = []
  for (let at = 0; at < sound.length; at += pieceLength)
    found.push(...endpointer.push(sound.subarray(at, at + pieceLength)))
  return [...found, ...endpointer.flush()]
}

const holds = ({ start, end }: { start: number; end: number }, from: number, to: number) =>
  start <= from && start > from - 0.6 && end >= to && end < to + 0.5

describe("in a quiet room", () => {
  test("a word is found whole, with a little on both sides", () => {
    const found = find(join(silence(1), word(0.5), silence(2)))
    expect(found).toHaveLength(1)
    expect(holds(found[0]!, 1, 1.5)).toBe(true)
    expect(found[0]!.samples.length).toBeCloseTo((found[0]!.end - found[0]!.start) * rateHz, -1)
  })

  test("what was heard before it comes along, as far back as it is all of the surroundings", () => {
    const seconds = find(join(silence(3), word(0.5), silence(1), word(0.5), silence(2))).map(
      ({ before }) => before.length / rateHz,
    )
    expect(seconds[0]).toBeCloseTo(1.5, 1)
    expect(seconds[1]).toBeLessThan(0.5)
    const endpointer = createEndpointer(rateHz)
    endpointer.push(join(silence(3), word(0.5), silence(0.2)), false)
    endpointer.forget()
    expect(endpointer.push(join(silence(0.6), word(0.5), silence(2)))[0]!.before.length / rateHz).toBeLessThan(0.4)
  })

  test("a slow reading with pauses inside stays one utterance", () => {
    const parts = [word(0.4), silence(0.7), word(0.4), silence(0.7), word(0.9)]
    expect(find(join(silence(1), ...parts, silence(2)))).toHaveLength(1)
  })

  test("two sentences are two utterances", () => {
    expect(find(join(silence(1), word(0.8), silence(1.4), word(0.8), silence(1.4)))).toHaveLength(2)
  })

  test("a click and a thump are no utterance", () => {
    expect(find(join(silence(1), word(0.03, 0.8), silence(2)))).toEqual([])
  })

  test("speech that begins with the very first sample is found", () => {
    const found = find(join(word(0.8), silence(2)))
    expect(found).toHaveLength(1)
    expect(found[0]!.start).toBe(0)
  })

  test("the pieces that the sound comes in make no difference", () => {
    const sound = join(silence(0.5), word(0.6), silence(1.5), word(0.3), silence(1.2))
    expect(find(sound, 2048)).toEqual(find(sound, 111))
  })
})

describe("beside a humming, hissing instrument", () => {
  const background = (seconds: number) => mix(hum(seconds, 0.02), hiss(seconds, 0.005))
  const withWords = (...parts: Float32Array[]) => mix(join(...parts), background(30))

  test("the end is found although it never gets quiet", () => {
    const found = find(withWords(silence(4), word(0.8), silence(3)))
    const spoken = found.filter(({ start, end }) => start < 4.8 && end > 4)
    expect(spoken).toHaveLength(1)
    expect(holds(spoken[0]!, 4, 4.8)).toBe(true)
  })

  test("an instrument that is switched on is background within three seconds, and is not waited for", () => {
    const found = find(join(silence(3), background(12)))
    expect(found.length).toBeLessThanOrEqual(1)
    for (const { end } of found) expect(end).toBeLessThan(3 + 3.5)
  })
})

test("an utterance that never ends is cut at thirty seconds, and what follows is kept", () => {
  const talk = join(...Array.from({ length: 50 }, () => join(word(0.7), silence(0.2))))
  const found = find(join(silence(1), talk, silence(2)))
  expect(found[0]!.capped).toBe(true)
  expect(found[0]!.end - found[0]!.start).toBeCloseTo(endpointerSettings.longest, 1)
  expect(found[1]!.start).toBeCloseTo(found[0]!.end, 1)
})

test("forgetting drops the open utterance and all that was before it", () => {
  const endpointer = createEndpointer(rateHz)
  endpointer.push(join(silence(1), word(0.5)))
  expect(endpointer.inSpeech).toBe(true)
  endpointer.forget()
  expect(endpointer.inSpeech).toBe(false)
  expect([...endpointer.push(silence(2)), ...endpointer.flush()]).toEqual([])
  expect(endpointer.push(join(word(0.5), silence(2)))[0]!.start).toBeGreaterThan(3)
})
