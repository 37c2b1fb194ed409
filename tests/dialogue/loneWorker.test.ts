/** Check-ins by the times of events alone: what is due when, and what a clock that jumps does to it. */
import fc from "fast-check"
import { expect, test } from "vitest"
import {
  answerWithinMs,
  heardFrom,
  isOverdue,
  type LoneWorker,
  notChecked,
  passTime,
  startChecks,
  tickInMs,
} from "../../src/dialogue/loneWorker"

const start = Date.parse("2026-03-02T09:00:00Z")
const at = (ms: number) => new Date(start + ms).toISOString()
const minute = 60_000

/** Lets time come to each of the moments in turn. */
const run = (worker: LoneWorker, moments: readonly number[]) =>
  moments.reduce(
    ({ worker: so, turns }, ms) => {
      const passed = passTime(so, at(ms))
      return { worker: passed.worker, turns: [...turns, passed.turn] }
    },
    { worker, turns: [] as string[] },
  )

test("off until the worker sets them, however long it takes", () => {
  expect(run(notChecked, [minute, 500 * minute]).turns).toEqual(["none", "none"])
  expect(tickInMs(notChecked, at(0))).toBeNull()
  expect(heardFrom(notChecked, at(0))).toBe(notChecked)
})

test("asks after the interval, again after half a minute, then sounds the alarm, and no more after that", () => {
  const ask = 20 * minute
  const moments = [ask - 1, ask, ask + answerWithinMs - 1, ask + answerWithinMs, ask + 2 * answerWithinMs, ask * 9]
  const { worker, turns } = run(startChecks(20, at(0)), moments)
  expect(turns).toEqual(["none", "ask", "none", "ask_again", "alarm", "none"])
  expect(isOverdue(worker)).toBe(true)
  expect(tickInMs(worker, at(ask * 9))).toBeNull()
})

test("a sign of life in any phase starts the interval again", () => {
  for (const moments of [[], [20], [20, 21], [20, 21, 22]]) {
    const { worker } = run(
      startChecks(20, at(0)),
      moments.map((one) => one * minute),
    )
    const heard = heardFrom(worker, at(25 * minute))
    expect(heard).toEqual(startChecks(20, at(25 * minute)))
    expect(tickInMs(heard, at(26 * minute))).toBe(19 * minute)
  }
})

test("a clock put back holds the question off by one interval at most", () => {
  const set = startChecks(20, at(0))
  const back = passTime(set, at(-600 * minute))
  expect(back.turn).toBe("none")
  expect(tickInMs(back.worker, at(-600 * minute))).toBe(20 * minute)
  expect(passTime(back.worker, at(-580 * minute)).turn).toBe("ask")
})

test("whatever the moments, the alarm is never reached without both questions before it", () => {
  const moments = fc.array(fc.integer({ min: -100, max: 500 }), { maxLength: 30 })
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 240 }), moments, (every, minutes) => {
      const { turns } = run(
        startChecks(every, at(0)),
        minutes.map((one) => one * minute),
      )
      const spoken = turns.filter((one) => one !== "none")
      expect(["ask", "ask_again", "alarm"].slice(0, spoken.length)).toEqual(spoken)
    }),
  )
})
