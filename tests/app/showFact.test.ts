/** How values look on the screen. Units and signs are the SI's own (SI brochure, 9th edition: a space before the unit). */
import fc from "fast-check"
import { expect, test } from "vitest"
import { showFact, showOhms } from "../../src/app/parts/showFact"
import type { RecordedFact } from "../../src/facts/Fact"
import { showDate } from "../../src/facts/showDate"

const shown: [RecordedFact, string, string][] = [
  [{ kind: "conductor_csa", value: 2.5, unit: "mm2", subject: "gas" }, "Size", "2.5 mm²"],
  [{ kind: "neutral_csa", value: 25, unit: "mm2" }, "Neutral", "25 mm²"],
  [{ kind: "length", value: 6.5, unit: "m" }, "Length", "6.5 m"],
  [{ kind: "distance", value: 600, unit: "mm", qualifier: "<=" }, "Clamp distance", "≤ 600 mm"],
  [{ kind: "resistance", value: 0.05, unit: "ohm" }, "Reading", "0.05 Ω"],
  [{ kind: "resistance", value: 0, unit: "ohm" }, "Reading", "0 Ω"],
  [{ kind: "resistance", value: 0.01, unit: "ohm", qualifier: "<" }, "Reading", "< 0.01 Ω"],
  [{ kind: "resistance", value: 99900, unit: "ohm", qualifier: ">" }, "Reading", "over range, > 99.9 kΩ"],
  [{ kind: "resistance", value: null, unit: "ohm", qualifier: ">" }, "Reading", "over range, limit not said"],
  [{ kind: "fuse_rating", value: 100, unit: "A" }, "Fuse", "100 A"],
  [{ kind: "earthing_arrangement", value: "TN-C-S" }, "Earthing", "TN-C-S"],
  [{ kind: "polarity", value: "reversed" }, "Polarity", "reversed"],
  [{ kind: "step_done", value: "label_fitted", subject: "gas" }, "Label fitted", "done"],
  [{ kind: "service", value: "structural_steel" }, "Part", "Structural steel"],
  [{ kind: "note", value: "stop valve behind the oven" }, "Note", "stop valve behind the oven"],
  [{ kind: "time", value: "2026-03-02", unit: "date" }, "Date", "2 Mar 2026"],
  [{ kind: "time", value: "14:30", unit: "time" }, "Time", "14:30"],
]

test.each(shown)("%j is shown as %s: %s", (fact, label, value) => {
  expect(showFact(fact)).toEqual({ label, value })
})

test.each([
  [999, "999 Ω"],
  [1000, "1 kΩ"],
  [1_500_000, "1.5 MΩ"],
  [1100, "1.1 kΩ"],
  [0.1, "0.1 Ω"],
])("%d ohms are shown as %s", (ohms, words) => expect(showOhms(ohms)).toBe(words))

test("no shown resistance has lost or gained a digit", () => {
  const prefixes: Record<string, string> = { "": "0", k: "3", M: "6" }
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 99_999_999 }), fc.integer({ min: 0, max: 5 }), (digits, places) => {
      const ohms = Number(`${digits}e-${places}`)
      fc.pre(String(ohms).length < 13 && !String(ohms).includes("e"))
      const parts = /^([\d.]+) ([kM]?)Ω$/.exec(showOhms(ohms))
      expect(Number(`${parts?.[1]}e${prefixes[parts?.[2] ?? ""]}`)).toBe(ohms)
    }),
  )
})

test("a date that is none stays as it was said", () => expect(showDate("next Tuesday")).toBe("next Tuesday"))
