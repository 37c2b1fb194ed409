/** Interrupting with a headset: what silences the voice, what is taken, and that the app's own words never are. */
import { expect, test, vi } from "vitest"
import { BargeIn, mostVain, tailMs } from "../../src/app/BargeIn"
import { mayBeOwnWords } from "../../src/dialogue/mayBeOwnWords"
import type { Heard } from "../../src/facts/Heard"
import { realInterpreter } from "../realTools"

const open = () => {
  const hooks = { silence: vi.fn(), resume: vi.fn(), giveUp: vi.fn(), isYes: ({ text }: Heard) => text === "yes" }
  return { hooks, bargeIn: new BargeIn(hooks) }
}
const heard = (text: string, margin: number | null = 1.5): Heard => {
  return { id: text, text, alternatives: [], words: [], start: 0, end: 1, engine: "offline", margin }
}
const readBack = "Water. Ten square. Is that it?"

/** Somebody speaks from one time to another while, or after, a sentence is said. */
const speakOver = (bargeIn: BargeIn, atMs = 500) => {
  bargeIn.saying(readBack, 0)
  bargeIn.state("speech", atMs)
  bargeIn.saying(null, atMs)
  bargeIn.state("listening", atMs + 900)
}

test("speech that starts while the app talks silences it, and the words are kept, waiting for a yes", () => {
  const { hooks, bargeIn } = open()
  speakOver(bargeIn)
  expect(hooks.silence).toHaveBeenCalledOnce()
  expect(bargeIn.take(heard("fourteen metres"))).toEqual({ ...heard("fourteen metres"), margin: 0.5 })
  bargeIn.settle()
  expect(hooks.resume).not.toHaveBeenCalled()
})

test("speech in the quiet silences nothing and passes as it is", () => {
  const { hooks, bargeIn } = open()
  bargeIn.saying(readBack, 0)
  bargeIn.saying(null, 2000)
  bargeIn.state("speech", 2000 + tailMs)
  bargeIn.state("listening", 3500)
  expect(bargeIn.take(heard("yes"))).toEqual(heard("yes"))
  expect(bargeIn.take(heard("water ten square"))).toEqual(heard("water ten square"))
  expect(hooks.silence).not.toHaveBeenCalled()
})

test.each([
  ["the app's own words", "water ten square", 1.5],
  ["its own words, misheard", "water ten square fit it", 1.5],
  ["a word of its own", "ten", 1.5],
  ["words that the ear doubted", "fourteen metres", 0.3],
  ["a yes to what was not said to its end", "yes", 1.5],
])("%s are dropped, and what was cut off is said again", (_what, text, margin) => {
  const { hooks, bargeIn } = open()
  speakOver(bargeIn)
  expect(bargeIn.take(heard(text, margin))).toBeNull()
  expect(hooks.resume).toHaveBeenCalledOnce()
})

test("a quick yes right after the last word counts, and an echo of the last words does not", () => {
  const { hooks, bargeIn } = open()
  for (const [text, passes] of [
    ["yes", true],
    ["ten square", false],
  ] as const) {
    bargeIn.saying(readBack, 0)
    bargeIn.saying(null, 2000)
    bargeIn.state("speech", 2000 + tailMs - 1)
    bargeIn.state("listening", 3000)
    expect(bargeIn.take(heard(text)) !== null).toBe(passes)
  }
  expect(hooks.silence).not.toHaveBeenCalled()
})

test("noise that cut a sentence off is followed by that sentence, and words of the worker's begin the count anew", () => {
  const { hooks, bargeIn } = open()
  speakOver(bargeIn)
  bargeIn.settle()
  expect(hooks.resume).toHaveBeenCalledTimes(1)
  speakOver(bargeIn)
  expect(bargeIn.take(heard("fourteen metres"))).not.toBeNull()
  for (let times = 1; times < mostVain; times++) {
    speakOver(bargeIn)
    bargeIn.settle()
  }
  expect(bargeIn.isOff).toBe(false)
})

test("an app that keeps hearing itself stops letting itself be interrupted, and says so once", () => {
  const { hooks, bargeIn } = open()
  for (let times = 0; times < mostVain; times++) {
    speakOver(bargeIn)
    expect(bargeIn.take(heard("water ten square"))).toBeNull()
  }
  expect(bargeIn.isOff).toBe(true)
  expect(hooks.giveUp).toHaveBeenCalledOnce()
})

test("nothing is settled while somebody still speaks", () => {
  const { hooks, bargeIn } = open()
  bargeIn.saying(readBack, 0)
  bargeIn.state("speech", 500)
  bargeIn.settle()
  expect(hooks.resume).not.toHaveBeenCalled()
})

test("words that begin before the app does are compared with what it then says", () => {
  const { hooks, bargeIn } = open()
  bargeIn.state("speech", 0)
  bargeIn.saying(readBack, 300)
  bargeIn.state("listening", 1500)
  expect(bargeIn.take(heard("ten square"))).toBeNull()
  expect(hooks.silence).not.toHaveBeenCalled()
})

test.each(["no make that sixteen square", "fourteen metres", "oil", "stop listening", "no"])(
  "%s is not taken for the app's own words",
  (text) => {
    expect(mayBeOwnWords([readBack], text)).toBe(false)
  },
)

test("every part of every sentence that the app reads back is taken for its own, with any one word misheard", () => {
  const sentences = [
    readBack,
    "Gas. Fourteen metres. Is that it?",
    "Warning. Water: four square is too small. Fit ten.",
  ]
  for (const sentence of sentences) {
    const words = sentence.toLowerCase().replace(/[.:?]/g, "").split(" ")
    for (let from = 0; from < words.length; from++)
      for (let to = from + 2; to <= words.length; to++)
        for (let at = from; at < to; at++) {
          const part = words.map((word, index) => (index === at ? "fifty" : word)).slice(from, to)
          expect(mayBeOwnWords([sentence], part.join(" ")), part.join(" ")).toBe(true)
        }
    expect(
      realInterpreter()
        .interpret(sentence)
        .facts.some((fact) => fact.kind === "confirm"),
    ).toBe(false)
  }
})
