/**
 * Numbers against a library that spells them (n2words, British English), and against the field reports of numbers gone
 * wrong in speech: every whole number and every decimal that it can spell comes back exactly, or is asked about.
 */
import { toCardinal } from "n2words/en-GB"
import { describe, expect, test } from "vitest"
import { sayNumber } from "../../src/facts/sayNumber"
import { interpreter } from "./interpreter"

const valuesOf = (text: string) => interpreter.explain(text).numbers.map((one) => (one.doubt ? one.doubt : one.value))

test("every whole number up to ten thousand that the library spells is read exactly", () => {
  const wrong: string[] = []
  for (let value = 1; value < 10_000; value += value < 1300 ? 1 : 37) {
    const text = `${toCardinal(value)} ohms`
    const got = valuesOf(text)
    if (got.length !== 1 || got[0] !== value) wrong.push(`${text}: ${got}`)
  }
  expect(wrong).toEqual([])
}, 60_000)

test("whole numbers are said as the library spells them, but for nought", () => {
  const wrong: string[] = []
  for (let value = 0; value < 1000; value += 1) {
    const library = toCardinal(value)
      .replaceAll("-", " ")
      .replace(/^zero$/, "nought")
    if (sayNumber(value) !== library) wrong.push(`${value}: ${sayNumber(value)} / ${library}`)
  }
  expect(wrong).toEqual([])
})

test("every reading from 0.01 to 9.99 ohm said digit by digit is read exactly", () => {
  const wrong: string[] = []
  for (let hundredths = 1; hundredths < 1000; hundredths += 1) {
    const value = Number(`${hundredths}e-2`)
    const got = valuesOf(`${sayNumber(value)} ohms`)
    if (got.length !== 1 || got[0] !== value) wrong.push(`${value}: ${got}`)
  }
  expect(wrong).toEqual([])
})

test("every reading that is read in figures is read exactly, in any common way of writing it", () => {
  const wrong: string[] = []
  for (let hundredths = 1; hundredths < 300; hundredths += 1) {
    const text = (hundredths / 100).toFixed(2)
    for (const written of [text, text.replace(".", ","), text.replace("0.", "0 ."), text.replace(/^0/, "O")]) {
      const got = valuesOf(`${written} ohms`)
      if (got.length !== 1 || got[0] !== Number(text)) wrong.push(`${written}: ${got}`)
    }
  }
  expect(wrong).toEqual([])
})

describe("field reports", () => {
  const reading = { asked: "resistance", item: "water" }
  const ohms = (text: string) =>
    interpreter.interpret(text, reading).facts.map((fact) => ("value" in fact ? fact.value : null))

  test.each([
    ["N01", "nought point oh three", 0.03],
    ["N02", "point one two", 0.12],
    ["N03", "one point one five", 1.15],
    ["N03", "one point fifteen ohms", 1.15],
    ["N04", "point double oh nine", 0.009],
    ["N05", "not point not five", 0.05],
    ["N06", "Oh, point oh five.", 0.05],
    ["N07", "zero .0 3", 0.03],
    ["N08", "nought point double nought seven ohms", 0.007],
    ["N09", "nought 0.05 ohms", 0.05],
    ["N10", "nought point nought two five", 0.025],
    ["N14", "nought point three meg", 300_000],
    ["N22", "three quarters of an ohm", 0.75],
    ["N25", "0,023", 0.023],
    ["N26", "1,15 ohms", 1.15],
    ["N27", ".02 ohms, that.", 0.02],
    ["N28", "0. 05", 0.05],
    ["N33", "0.05 \u2126", 0.05],
    ["N33", "0.05 \u03a9", 0.05],
    ["N34", "23 mΩ", 0.023],
    ["N35", "Greater than 99.9K.", 99_900],
    ["N36", "it's greater than two meg", 2_000_000],
    ["N45", "nought point nought five, I mean nought point nought six", 0.06],
    ["N54", "it settled at 1.12", 1.12],
  ])("%s: %s is %d ohm", (_, text, value) => {
    expect(ohms(text)).toEqual([value])
  })

  test.each([
    ["N02", "point five"],
    ["N05", "not five"],
    ["N06", "oh. Oh, five."],
    ["N11", "nought point nought five at the clamp, nought point nought three at the joint"],
    ["N12", "nought point"],
    ["N12", "nought point nought"],
    ["N13", "005 ohms"],
    ["N18", "0:05"],
    ["N26", "1,150 ohms"],
    ["N34", "23 MΩ"],
    ["N36", "four k seven"],
    ["N46", "0.05 0.5"],
    ["N49", "over ninety-nine point nine"],
  ])("%s: %s is asked about", (_, text) => {
    const { facts, ask } = interpreter.interpret(text, reading)
    expect(facts).toEqual([])
    expect(ask?.kind).toBe("resistance")
  })

  test.each([
    ["N15", "four fifty off the meter outlet", {}, "distance", 450],
    ["N19", "two hundred off the meter", {}, "distance", 200],
    ["N20", "one four", { asked: "confirm", readback: { kind: "length", value: 40, unit: "m" } }, "correct", 14],
    ["N21", "Three hundred.", { asked: "distance" }, "distance", 300],
    ["N23", "1½ metres", { asked: "length" }, "length", 1.5],
    ["N29", "10 hmm", { asked: "conductor_csa" }, "conductor_csa", 10],
    ["N30", "600ml off the meter", {}, "distance", 600],
    ["N31", "14m", { asked: "length" }, "length", 14],
    ["N32", "16 mm 2", { asked: "conductor_csa" }, "conductor_csa", 16],
    ["N38", "fif teen metres", { asked: "length" }, "length", 15],
    ["N40", "to metres", { asked: "length" }, "length", 2],
    ["N41", "clamp to the meter is three hundred", {}, "distance", 300],
    ["N44", "ten mil. Scratch that. Sixteen mil.", { asked: "conductor_csa" }, "conductor_csa", 16],
  ] as const)("%s: %s", (_, text, context, kind, value) => {
    expect(interpreter.interpret(text, context)).toMatchObject({ facts: [{ kind, value }], ask: null })
  })

  test.each([
    ["N16", "gas ten five metres", {}],
    ["N17", "water's in 1614 metres", {}],
    ["N18", "16:14 metres", {}],
    ["N24", "metres, clamp on", { item: "water" }],
    ["N31", "16 million", { asked: "conductor_csa" }],
    ["N38", "50 teen metres", { asked: "length" }],
    ["N39", "60 mil", { asked: "conductor_csa" }],
    ["N39", "sixteen amp fuse", { asked: "fuse_rating" }],
    ["N46", "fifteen fifty metres", { asked: "length" }],
    ["N55", "14 to 16 metres", { asked: "length" }],
    ["N47", "Right.", { asked: "confirm", readback: { kind: "length", value: 40, unit: "m" } }],
    ["N47", "yeah no", { asked: "confirm", readback: { kind: "length", value: 40, unit: "m" } }],
  ] as const)("%s: %s asks and writes no number", (_, text, context) => {
    const { facts, ask } = interpreter.interpret(text, context)
    expect(facts.filter((fact) => typeof fact.value === "number")).toEqual([])
    expect(ask).not.toBeNull()
  })

  test.each(["OL.", "0L", "open circuit", "off the scale"])("N50: %s is over range and no number", (text) => {
    const { facts, ask } = interpreter.interpret(text, reading)
    expect(facts).toEqual([{ kind: "resistance", value: null, unit: "ohm", qualifier: ">", subject: "water" }])
    expect(ask?.kind).toBe("resistance")
  })

  test.each(["Thank you for watching.", "you", "[BLANK_AUDIO]"])("N43: %s confirms nothing", (text) => {
    const context = { asked: "confirm", readback: { kind: "length", value: 40, unit: "m" } } as const
    expect(interpreter.interpret(text, context)).toEqual({ facts: [], ask: null, command: null })
  })
})
