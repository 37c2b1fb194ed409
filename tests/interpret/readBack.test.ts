/** What is read aloud means, to the interpreter, just the fact that was meant; and it changes nothing if heard again. */
import fc from "fast-check"
import { describe, expect, test, vi } from "vitest"
import { RecordedFact, Step } from "../../src/facts/Fact"
import type { Context } from "../../src/facts/Interpretation"
import { knownServices } from "../../src/facts/Item"
import { sizesMm2 } from "../../src/facts/Quantity"
import { readBack } from "../../src/interpret/readBack"
import { interpreter } from "./interpreter"
import { takesSubjectStep } from "./stepSubjects"

const now = "2025-10-15T14:52"
const bond = fc.constantFrom(...knownServices)
const item = fc.oneof({ weight: 5, arbitrary: bond }, { weight: 1, arbitrary: fc.constant("earthing_conductor") })
const size = fc.constantFrom(...sizesMm2)
/** A decimal with so many digits after the point, as a number that prints exactly so. */
const decimal = (most: number, places: number) =>
  fc.integer({ min: 1, max: most * 10 ** places }).map((count) => Number(`${count}e-${places}`))

const facts: Record<string, fc.Arbitrary<RecordedFact>> = {
  size: fc.record({
    kind: fc.constant("conductor_csa" as const),
    value: size,
    unit: fc.constant("mm2" as const),
    subject: item,
  }),
  neutral: fc.record({ kind: fc.constant("neutral_csa" as const), value: size, unit: fc.constant("mm2" as const) }),
  service: fc.record({ kind: fc.constant("service" as const), value: bond }),
  length: fc.record({
    kind: fc.constant("length" as const),
    value: fc.oneof(fc.integer({ min: 1, max: 100 }), decimal(99, 1), decimal(99, 2)).filter((metres) => metres >= 0.3),
    unit: fc.constant("m" as const),
    subject: item,
  }),
  distance: fc.record({
    kind: fc.constant("distance" as const),
    value: fc.integer({ min: 4, max: 150 }).map((tens) => tens * 10),
    unit: fc.constant("mm" as const),
    subject: bond,
  }),
  reading: fc.record({
    kind: fc.constant("resistance" as const),
    value: fc.oneof(decimal(2, 2), decimal(1, 3), fc.integer({ min: 1, max: 999 })),
    unit: fc.constant("ohm" as const),
    subject: bond,
  }),
  bounded: fc.record({
    kind: fc.constant("resistance" as const),
    value: fc.oneof(
      decimal(1, 2),
      fc.integer({ min: 1, max: 9999 }).map((tenths) => tenths * 100),
      fc.integer({ min: 1, max: 999 }).map((megohms) => megohms * 1_000_000),
    ),
    unit: fc.constant("ohm" as const),
    qualifier: fc.constantFrom(">" as const, "<" as const, "<=" as const),
    subject: bond,
  }),
  arrangement: fc.record({
    kind: fc.constant("earthing_arrangement" as const),
    value: fc.constantFrom("TN-S" as const, "TN-C-S" as const, "TT" as const),
  }),
  fuse: fc.record({
    kind: fc.constant("fuse_rating" as const),
    value: fc.constantFrom(60, 80, 100),
    unit: fc.constant("A" as const),
  }),
  polarity: fc.record({
    kind: fc.constant("polarity" as const),
    value: fc.constantFrom("correct" as const, "reversed" as const),
  }),
  step: fc
    .record({ kind: fc.constant("step_done" as const), value: fc.constantFrom(...Step.options), subject: bond })
    .map(({ subject, ...fact }) => (takesSubjectStep(fact.value) ? { ...fact, subject } : fact)),
}

/** Facts without the part that is named only to say whose they are. */
const withoutNames = (fact: RecordedFact) =>
  interpreter
    .interpret(readBack(fact), contextFor(fact))
    .facts.filter((one) => one.kind !== "service" || fact.kind === "service")

const contextFor = (fact: RecordedFact): Context => ({
  now,
  ...("subject" in fact && fact.subject ? { item: fact.subject } : {}),
})
/** Facts a kind; the nightly run sets it higher. */
const runs = Number(process.env.BOTHHANDS_RUNS ?? 200)

vi.setConfig({ testTimeout: 5000 + runs * 20 })

describe("reading back and interpreting are inverses", () => {
  test.each(Object.entries(facts))("%s", (_, arbitrary) => {
    fc.assert(
      fc.property(arbitrary, (fact) => {
        expect(RecordedFact.safeParse(fact).success).toBe(true)
        expect(withoutNames(fact), readBack(fact)).toEqual([fact])
      }),
      { numRuns: runs },
    )
  })

  test("an over-range reading keeps no number", () => {
    const fact = { kind: "resistance", value: null, unit: "ohm", qualifier: ">", subject: "gas" } as const
    expect(withoutNames(fact)).toEqual([fact])
    expect(readBack(fact)).toBe("Gas. Over range.")
  })

  test("a time and a date come back when their question is open", () => {
    const time = { kind: "time", value: "09:05", unit: "time" } as const
    const date = { kind: "time", value: "2030-04-03", unit: "date" } as const
    expect(interpreter.interpret(readBack(time), { now, asked: "time_of_test" }).facts).toEqual([time])
    expect(interpreter.interpret(readBack(date), { now, asked: "next_test" }).facts).toEqual([date])
  })
})

test("a read-back that the app hears itself neither confirms, denies nor repairs", () => {
  const all = fc.oneof(...Object.values(facts))
  fc.assert(
    fc.property(all, (fact) => {
      const heard = interpreter.interpret(readBack(fact), { asked: "confirm" })
      expect(
        heard.facts.filter((one) => ["confirm", "deny", "correct", "undo", "skip", "repeat"].includes(one.kind)),
      ).toEqual([])
    }),
    { numRuns: runs },
  )
})

test.each([
  [{ kind: "conductor_csa", value: 16, unit: "mm2", subject: "water" }, "Water. Sixteen square."],
  [{ kind: "length", value: 14, unit: "m", subject: "water" }, "Water. Fourteen metres."],
  [{ kind: "resistance", value: 0.05, unit: "ohm", subject: "gas" }, "Gas. Nought point nought five ohms."],
  [
    { kind: "resistance", value: 99_900, unit: "ohm", qualifier: ">", subject: "test_leads" },
    "Test leads. Over range, more than ninety nine point nine kilohms.",
  ],
  [{ kind: "step_done", value: "isolated_proved_dead" }, "Isolated and proved dead."],
] as Array<[RecordedFact, string]>)("%j is said as %s", (fact, words) => {
  expect(readBack(fact)).toBe(words)
})
