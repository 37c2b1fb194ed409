/** Lines in, facts out: text and JSON lines mixed, and a bad line does not stop the rest. */
import { expect, test } from "vitest"
import type { Console } from "../../src/cli/Console"
import { interpretLines } from "../../src/cli/interpretLines"
import { interpreter } from "./interpreter"

const runOver = async (lines: readonly string[]) => {
  const printed: string[] = []
  const complaints: string[] = []
  const console_: Console = {
    print: (line) => void printed.push(line),
    complain: (line) => void complaints.push(line),
    lines: async function* () {
      yield* lines
    },
  }
  const status = await interpretLines(interpreter, console_)
  return { status, printed: printed.map((line) => JSON.parse(line) as Record<string, unknown>), complaints }
}

test("a plain line and a line with its context give one JSON line each", async () => {
  const { status, printed, complaints } = await runOver([
    "gas bond, ten mil",
    '{"text":"nought point nought five","context":{"asked":"resistance","item":"water"}}',
  ])
  expect(status).toBe(0)
  expect(complaints).toEqual([])
  expect(printed).toEqual([
    {
      text: "gas bond, ten mil",
      facts: [
        { kind: "service", value: "gas" },
        { kind: "conductor_csa", value: 10, unit: "mm2", subject: "gas" },
      ],
      ask: null,
    },
    {
      text: "nought point nought five",
      facts: [{ kind: "resistance", value: 0.05, unit: "ohm", subject: "water" }],
      ask: null,
    },
  ])
})

test("a command is shown only where there is one", async () => {
  const { printed } = await runOver(["what's left", "hello there"])
  expect(printed).toEqual([
    { text: "what's left", facts: [], ask: null, command: { kind: "whats_left" } },
    { text: "hello there", facts: [], ask: null },
  ])
})

test("bad lines are complained about by number, and the rest goes on", async () => {
  const { status, printed, complaints } = await runOver(["{nonsense", '{"words":"ten mil"}', "", "undo"])
  expect(status).toBe(2)
  expect(complaints).toHaveLength(2)
  expect(complaints[0]).toBe("Line 1: this is not JSON.")
  expect(complaints[1]).toMatch(/^Line 2: "text" is not what was expected/)
  expect(printed).toEqual([{ text: "undo", facts: [{ kind: "undo", value: true }], ask: null }])
})
