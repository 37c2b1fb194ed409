/** What was heard and said to be wrong is told to the ear, until something is agreed. */
import { expect, test } from "vitest"
import { contextOf } from "../../src/dialogue/contextOf"
import type { DialogueState } from "../../src/dialogue/DialogueState"
import { emptyDialogue } from "../../src/dialogue/emptyDialogue"
import { step } from "../../src/dialogue/step"
import { allHeld } from "../../src/record/holding"
import { realTools } from "../realTools"

const at = "2026-03-02T09:00:00Z"
let ids = 0
const tools = { ...realTools(), newId: () => `${++ids}` }

/** The job after these sentences, each with the margin that an ear gave it. */
const after = (...said: [text: string, margin: number][]): DialogueState => {
  const opened = step(emptyDialogue("test"), { type: "opened", at, job: "j", place: "p", pack: "uk-bs7671" }, tools)
  return said.reduce((state, [text, margin], n) => {
    const heard = { id: `h${n}`, text, alternatives: [], words: [], start: n, end: n + 1, engine: "offline", margin }
    return step(state, { type: "heard", at, heard }, tools).state
  }, opened.state)
}
const misheardAfter = (...said: [text: string, margin: number][]) => contextOf(after(...said), at).misheard ?? []

test("a value that was said no to is told, and a repair that came out the same", () => {
  expect(misheardAfter(["oil bond ten square", 1.5], ["ninety metres", 0.5], ["no", 1.5])).toEqual(["ninety metres"])
  expect(misheardAfter(["oil bond ten square", 1.5], ["ninety metres", 0.5], ["make that ninety metres", 0.5])).toEqual(
    ["ninety metres", "make that ninety metres"],
  )
})

test("nothing is told before a no, nor after the right value was agreed to", () => {
  expect(misheardAfter(["oil bond ten square", 1.5], ["ninety metres", 0.5])).toEqual([])
  expect(
    misheardAfter(
      ["oil bond ten square", 1.5],
      ["ninety metres", 0.5],
      ["no", 1.5],
      ["one nine metres", 0.6],
      ["yes", 1.5],
    ),
  ).toEqual([])
})

test("a part whose values come out wrong again and again is taken back itself, and its name told", () => {
  const wrong: [string, number][] = [
    ["water bond four square", 0.4],
    ["no", 1.5],
    ["water bond ten square", 0.5],
    ["no", 1.5],
  ]
  const state = after(...wrong)
  expect([state.item, allHeld(state.record)]).toEqual([null, []])
  expect(misheardAfter(...wrong)).toContain("water")
})
