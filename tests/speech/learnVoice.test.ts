/** What prompts teach of a voice: bounded, unmoved by a few spoilt ones, and never at the cost of a number. */
import fc from "fast-check"
import { expect, test } from "vitest"
import { learnVoice, middleLevel } from "../../src/speech/learnVoice"
import { levelOf, marginOf } from "../../src/speech/margins"
import type { Fit } from "../../src/speech/measureFit"
import { easeFit, mostEase, VoiceFit } from "../../src/speech/VoiceFit"

const fitOf = (worstWord: number): Fit => ({ worstWord, whole: -4, hidden: 0, shortestNumber: 0.2 })
const many = (worstWord: number, count: number) => Array.from({ length: count }, () => fitOf(worstWord))

const anyFit = fc.record({
  worstWord: fc.double({ min: -20, max: 5, noNaN: true }),
  whole: fc.double({ min: -12, max: 0, noNaN: true }),
  hidden: fc.double({ min: 0, max: 300, noNaN: true }),
  shortestNumber: fc.option(fc.double({ min: 0.01, max: 1, noNaN: true })),
})
const anyVoice = fc
  .double({ min: 0, max: mostEase, noNaN: true })
  .map((ease): VoiceFit => ({ v: 1, ease, prompts: 20 }))

test("whatever was read, what is learnt lies within its bounds and can be stored", () => {
  fc.assert(
    fc.property(fc.array(anyFit, { minLength: 12, maxLength: 20 }), (fits) => {
      const learnt = learnVoice(fits)
      expect(learnt.ok && VoiceFit.safeParse(learnt.value).success).toBe(true)
    }),
  )
})

test("a voice that fits worse is eased more, up to the most", () => {
  const easeAt = (level: number) => {
    const learnt = learnVoice(many(level, 20))
    return learnt.ok ? learnt.value.ease : null
  }
  expect(easeAt(1)).toBe(0)
  expect(easeAt(-9)).toBe(mostEase)
  const eases = [0, -0.5, -1, -1.5, -2].map(easeAt)
  expect(eases).toEqual([...eases].sort())
  expect(new Set(eases).size).toBeGreaterThan(2)
})

test("a third of the prompts spoilt by somebody else teaches no more than the rest do", () => {
  expect(learnVoice([...many(0, 14), ...many(-15, 6)])).toEqual(learnVoice(many(0, 20)))
})

test("too few prompts teach nothing", () => {
  expect(learnVoice(many(-3, 11))).toMatchObject({ ok: false })
  expect(() => middleLevel([])).toThrow()
})

test("the ease is added to the level and to nothing else", () => {
  const fit = fitOf(-2.5)
  expect(levelOf(easeFit(fit, { v: 1, ease: 0.5, prompts: 20 }))).toBeCloseTo(levelOf(fit) + 0.5)
  expect(easeFit(fit, null)).toBe(fit)
})

test("no voice takes a number plainly whose lead is too small, nor words that hide in silence", () => {
  fc.assert(
    fc.property(anyFit, anyVoice, fc.double({ min: -50, max: 29.9, noNaN: true }), (fit, voice, lead) => {
      expect(marginOf(easeFit(fit, voice), lead) ?? 0).toBeLessThan(1)
    }),
  )
  fc.assert(
    fc.property(anyFit, anyVoice, (fit, voice) => {
      expect(marginOf(easeFit({ ...fit, hidden: 151 }, voice), null)).toBeNull()
    }),
  )
})
