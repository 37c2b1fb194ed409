/** Every collected check value against the rules: compared, or named with the reason why it is not ours. */
import { expect, test } from "vitest"
import { collectedValues, compare, notOurs } from "./collectedValues"

const lines = collectedValues.map((value) => ({ value, answer: compare(value) }))
const ours = lines.flatMap(({ value, answer }) => (answer && "got" in answer ? [{ value, answer }] : []))

test.each(ours.map((one) => [one.value.id, one] as const))("%s", (_id, { answer }) => {
  if (answer.within === undefined) expect(answer.got).toEqual(answer.want)
  else expect(Math.abs(Number(answer.got) - Number(answer.want))).toBeLessThanOrEqual(answer.within)
})

test("all 396 lines are accounted for, and just these are not ours", () => {
  expect(collectedValues.length).toBe(396)
  expect(lines.filter(({ answer }) => answer === null).map(({ value }) => value.id)).toEqual([])
  expect(lines.length - ours.length).toBe(26)
})

test("no reason is left without a line", () => {
  const unused = notOurs.filter(([id]) => !collectedValues.some((value) => value.id.startsWith(id)))
  expect(unused).toEqual([])
})
