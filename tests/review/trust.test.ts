/** Whole, cut and changed logs told apart, on files that were really cut and changed. */
import { expect, test } from "vitest"
import { readJobFile } from "../../src/record/jobFile"
import { trustOf } from "../../src/review/trust"
import { bakeryFile, bakeryLines } from "./officeJob"

const trustIn = (text: string) => {
  const read = readJobFile(text)
  if (!read.ok) throw new Error(read.because)
  return trustOf(read.value.lines, read.value.faults, 0)
}

test("the sample is whole, and its chain ends as its file says", () => {
  const last = JSON.parse(bakeryFile.trim().split("\n").at(-1)!)
  expect(trustIn(bakeryFile)).toEqual({
    state: "whole",
    faults: [],
    lines: last.end.lines,
    struck: 0,
    end: last.end.hash,
  })
})

test.each([
  ["cut", bakeryFile.slice(0, 20_000).split("\n").slice(0, -1).join("\n")],
  ["changed", bakeryFile.replace("supply neutral twenty five", "supply neutral sixteen")],
  ["changed", `${bakeryFile.split("\n").slice(0, 5).join("\n")}\n${bakeryFile.split("\n").slice(6).join("\n")}`],
  ["cut", `${bakeryFile.split("\n").slice(0, 5).join("\n")}\n{"line":`],
] as const)("a file that was tampered with is %s", (state, text) => {
  const trust = trustIn(text)
  expect(trust.state).toBe(state)
  expect(trust.faults.length).toBeGreaterThan(0)
})

test("lines that are missing or unreadable in the store are counted", () => {
  const holed = bakeryLines.filter((line) => line.seq !== 9 && line.seq !== 30)
  expect(trustOf(holed, [], 0)).toMatchObject({
    state: "lost",
    faults: ["2 of the lines before the last one are missing."],
  })
  expect(trustOf(holed, [], 2).faults).toEqual(["2 stored lines could not be read."])
})
