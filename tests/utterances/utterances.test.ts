/** Every labelled utterance, scored worst first. The shared set was labelled by people who never saw this code. */
import { readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { describe, expect, test } from "vitest"
import type { Context } from "../../src/facts/Interpretation"
import { interpreter } from "../interpret/interpreter"
import { type Labelled, readLabelled, type Score, scoreLine } from "./scoreLine"

const sets = readdirSync(import.meta.dirname).filter((name) => name.endsWith(".jsonl"))

const scored = (results: ReadonlyMap<Labelled, Score>, score: Score) =>
  [...results].filter(([, one]) => one === score).map(([line]) => `${line.id} ${line.text}`)

describe.each(sets)("%s", (name) => {
  const lines = readLabelled(name)
  const results = new Map(
    lines.map((line) => [line, scoreLine(line, interpreter.interpret(line.text, line.context))] as const),
  )

  test("writes nothing that was not meant", () => {
    expect(scored(results, "fatal")).toEqual([])
  })

  test("loses at most one line in a hundred", () => {
    expect(scored(results, "lost").length).toBeLessThanOrEqual(lines.length / 100)
  })

  test("asks needlessly on at most three lines in a hundred, and always where it must", () => {
    expect(scored(results, "annoying").length).toBeLessThanOrEqual(Math.max(1, (lines.length * 3) / 100))
    expect(scored(results, "unasked").length).toBeLessThanOrEqual(Math.max(1, lines.length / 100))
  })
})

test("our own lines outnumber the shared ones", () => {
  const own = sets.filter((name) => name !== "labelled.jsonl").flatMap(readLabelled)
  expect(own.length).toBeGreaterThanOrEqual(readLabelled("labelled.jsonl").length)
  expect(new Set(own.map((line) => line.id)).size).toBe(own.length)
})

const never = readFileSync(join(import.meta.dirname, "never.txt"), "utf8")
  .split("\n")
  .filter((line) => line !== "" && !line.startsWith("#"))
const questions: Context[] = [
  {},
  { item: "water" },
  ...["conductor_csa", "length", "distance", "resistance", "service", "earthing_arrangement", "step:clamp_fitted"].map(
    (asked) => ({ asked, item: "gas" }),
  ),
  { asked: "confirm", item: "water", readback: { kind: "conductor_csa", value: 16, unit: "mm2", subject: "water" } },
]

test.each(never)("never a fact: %s", (text) => {
  expect(questions.flatMap((context) => interpreter.interpret(text, context).facts)).toEqual([])
  expect(interpreter.interpret(text).ask).toBeNull()
})
