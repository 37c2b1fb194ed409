/**
 * An hour of dictated talk with one word in twenty damaged. A number that became another good number leaves no trace in
 * text, so the promise is kept at the desk: nothing out of a file passes for accepted before a person says yes to it.
 */
import { expect, test } from "vitest"
import { allHeld } from "../../src/record/holding"
import { openWords } from "../../src/review/signing"
import { workList } from "../../src/review/workList"
import { review } from "../review/officeJob"
import { damageLines } from "./damageWords"
import { playHour, scoreHour } from "./scoreHour"
import { wholeHour } from "./wholeHour"

// Each word is damaged by chance, so a few sentences may come out with less than one in twenty.
test.each([
  [1, 514, 0.04],
  [2, 90, 0.025],
  [3, 90, 0.025],
  [4, 90, 0.025],
])("no value is silently wrong with damage %i in %i sentences", { timeout: 60_000 }, (seed, sentences, leastShare) => {
  const scored = scoreHour(seed, sentences)
  expect(scored).toHaveLength(sentences)
  const words = scored.flatMap(({ text }) => text.split(/\s+/)).length
  const damaged = scored.flatMap(({ damaged }) => damaged.kinds).length
  expect(damaged / words).toBeGreaterThan(leastShare)
  expect(scored.some(({ outcome }) => outcome !== "right")).toBe(true)
  expect(scored.filter(({ outcome }) => outcome === "silent")).toEqual([])
})

test("every value waits for a yes, is in the list, and is counted before anybody signs", () => {
  const job = review(playHour(damageLines(wholeHour().slice(0, 60), 0.05, 4).map(({ text }) => text)))
  const held = allHeld(job.record).filter(({ fact }) => fact.kind !== "service")
  expect(held.filter(({ accepted }) => accepted !== null)).toEqual([])
  // A part that was only named stands in the list too, and is no value.
  const open = workList(job).filter(
    ({ held, kind }) =>
      held !== null && held.fact.kind !== "service" && !["kept", "unchallenged", "rest"].includes(kind),
  )
  expect(new Set(open.map((point) => point.held!.entry))).toEqual(new Set(held.map(({ entry }) => entry)))
  const unseen = held.filter(({ needsYes }) => !needsYes).length
  expect(openWords(job).join("\n")).toContain(`${unseen} values that nobody has said yes to`)
})

test.each([
  [["gas ten square", "water sixteen square", "gas six square"], "gas", /first said otherwise: Gas\. Ten square/],
  [["gas ten square", "eight metres of cable on the"], "gas", /breaks off/],
])("what speaks against a value is told beside it: %j", (texts, item, doubt) => {
  const points = workList(review(playHour(texts as string[]))).filter((point) => point.item === item)
  expect(points.map((point) => point.doubt ?? "").join("\n")).toMatch(doubt)
})
