/** What prompts teach of a voice: bounded, unmoved by a few spoilt ones, and never at the cost of a number. */
import fc from "fast-check"
import { expect, test } from "vitest"
import { learnVoice, middleLevel } from "../../src/speech/learnVoice"
import { marginFor } from "../../src/speech/marginFor"
import { levelOf, marginOf } from "../../src/speech/margins"
import type { Fit } from "../../src/speech/measureFit"
import { mostEase, VoiceFit } from "../../src/speech/VoiceFit"

const fitOf = (worstWord: number): Fit => ({
  worstWord,
  whole: -4,
  hidden: 0,
  shortestNumber: 0.2,
  noise: 0,
  wavers: false,
})
const many = (worstWord: number, count: number) => Array.from({ length: count }, () => fitOf(worstWord))

const anyFit = fc.record({
  worstWord: fc.double({ min: -20, max: 5, noNaN: true }),
  whole: fc.double({ min: -12, max: 0, noNaN: true }),
  hidden: fc.double({ min: 0, max: 300, noNaN: true }),
  shortestNumber: fc.option(fc.double({ min: 0.01, max: 1, noNaN: true })),
  noise: fc.double({ min: 0, max: 1, noNaN: true }),
  wavers: fc.boolean(),
})
const anyLead = fc.option(fc.double({ min: -50, max: 200, noNaN: true }))
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

test("what is silent for anybody is silent for every voice, and no voice is asked about what anybody says plainly", () => {
  fc.assert(
    fc.property(anyFit, anyLead, anyVoice, (fit, lead, voice) => {
      const [usual, own] = [marginOf(fit, lead), marginFor(fit, lead, voice)]
      expect(own === null).toBe(usual === null)
      expect(own ?? 0).toBeGreaterThanOrEqual(usual ?? 0)
      expect(marginFor(fit, lead, null)).toBe(usual)
    }),
  )
})

test("what is plain only by the ease leads by 60 nats or has no rival, and fits but little worse", () => {
  fc.assert(
    fc.property(anyFit, anyLead, anyVoice, (fit, lead, voice) => {
      const isOnlyByEase = (marginFor(fit, lead, voice) ?? 0) >= 1 && (marginOf(fit, lead) ?? 0) < 1
      if (!isOnlyByEase) return
      expect(lead ?? 60).toBeGreaterThanOrEqual(60)
      expect(levelOf(fit)).toBeGreaterThanOrEqual(-2 - mostEase - 1e-3)
      expect(fit.hidden).toBeLessThanOrEqual(40)
    }),
    { numRuns: 2000 },
  )
})

test.each([
  // As two voices that fit badly were heard: the level, the lead, and whether it was right.
  [-2.78, 254, true],
  [-2.35, 65, true],
  [-2.55, null, true],
  [-2.79, 34, false],
  [-2.31, 21, false],
  [-3.17, 105, false],
])("at %d with a lead of %j it is taken plainly by a voice that is eased: %s", (level, lead, isPlain) => {
  const margin = marginFor(fitOf(level), lead, { v: 1, ease: mostEase, prompts: 20 })
  expect((margin ?? 0) >= 1).toBe(isPlain)
  expect(marginOf(fitOf(level), lead) ?? 0).toBeLessThan(1)
})

test("while a voice is learnt nothing is silent", () => {
  expect(marginFor(fitOf(-4.5), null, null)).toBeNull()
  expect(marginFor(fitOf(-4.5), null, "learning")).toBe(0)
})
