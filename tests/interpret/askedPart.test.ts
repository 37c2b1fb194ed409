/** What was plainly said and only lacks its owner comes along with the question for the part, so that it need not be said again. */
import { expect, test } from "vitest"
import { realInterpreter } from "../realTools"

const { interpret } = realInterpreter()

test.each([
  ["boiler house one end off", [{ kind: "step_done", value: "one_end_disconnected" }]],
  ["gas or oil sixteen square", [{ kind: "conductor_csa", value: 16, unit: "mm2" }]],
  ["swimming pool ten square", [{ kind: "conductor_csa", value: 10, unit: "mm2" }]],
])("%s", (text, values) => {
  expect(interpret(text, { item: "water" })).toMatchObject({ facts: [], ask: { kind: "service", values } })
})

test("a value that is itself in doubt does not come along", () => {
  const { ask } = interpret("gas or oil fifteen or fifty metres", { item: "water" })
  expect(ask).not.toBeNull()
  expect(ask?.values).toBeUndefined()
})
