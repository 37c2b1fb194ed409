/** The words that a value rests on, against sentences lit by hand. */
import { expect, test } from "vitest"
import type { RecordedFact } from "../../src/facts/Fact"
import type { Heard } from "../../src/facts/Heard"
import { lightUp } from "../../src/review/lightUp"
import { bakeryLines, tools } from "./officeJob"

const heardAs = (text: string): Heard => ({
  id: "h",
  text,
  alternatives: [],
  words: [],
  start: 0,
  end: 1,
  engine: "scripted",
  margin: null,
})

const litIn = (text: string, fact: RecordedFact, item: string | null) =>
  lightUp(heardAs(text), fact, item, tools.interpret)
    .filter((span) => span.lit)
    .map((span) => span.text.trim())
    .join(" ")

test.each([
  ["gas ten square eight metres", { kind: "conductor_csa", value: 10, unit: "mm2", subject: "gas" }, "gas ten square"],
  ["gas ten square eight metres", { kind: "length", value: 8, unit: "m", subject: "gas" }, "gas eight metres"],
  [
    "well the supply neutral is twenty five square",
    { kind: "neutral_csa", value: 25, unit: "mm2" },
    "neutral twenty five",
  ],
  ["no make that ten square", { kind: "conductor_csa", value: 10, unit: "mm2", subject: "water" }, "ten square"],
] as const)("%s", (text, fact, lit) => {
  const found = litIn(text, fact, "subject" in fact ? fact.subject : "supply")
  for (const word of lit.split(" ")) expect(found.split(" ")).toContain(word)
  expect(found.split(" ").length).toBeLessThanOrEqual(lit.split(" ").length + 1)
})

test("the pieces joined are the sentence, and a sentence that does not hold the value has no light", () => {
  const fact: RecordedFact = { kind: "length", value: 8, unit: "m", subject: "gas" }
  for (const text of ["yes", "  gas, ten square.  Eight metres ", ""]) {
    expect(
      lightUp(heardAs(text), fact, "gas", tools.interpret)
        .map((span) => span.text)
        .join(""),
    ).toBe(text)
  }
  expect(litIn("yes that is right", fact, "gas")).toBe("")
})

test("every value of the sample is lit in at least one of their sentences", () => {
  const heard = new Map(
    bakeryLines.flatMap((line) => (line.type === "heard" ? [[line.heard.id, line.heard] as const] : [])),
  )
  const entries = bakeryLines.flatMap((line) => (line.type === "entry" && line.fact.kind !== "service" ? [line] : []))
  const dark = entries.filter(({ fact, origin }) => {
    if (origin.by !== "voice") return false
    const item = "subject" in fact ? (fact.subject ?? null) : null
    return !origin.heard.some((id) => lightUp(heard.get(id)!, fact, item, tools.interpret).some((span) => span.lit))
  })
  expect(dark.map((line) => `${line.fact.kind} ${line.fact.value}`)).toEqual([])
})
