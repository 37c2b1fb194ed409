/** Coming back to the page: an ear that slept is said to have slept, and one that heard everything is left alone. */
import { expect, test } from "vitest"
import { sleptWords, stoppedWords, watchReturn } from "../../src/app/device/watchReturn"
import type { SessionView } from "../../src/app/Session"
import { createMadeUpSession, restingView } from "./createMadeUpSession"

const listening: SessionView = { ...restingView, phase: "job", ear: { ...restingView.ear, state: "listening" } }

const setUp = (view: SessionView) => {
  const session = createMadeUpSession(view)
  let at = 0
  let look = () => {}
  const waiting: { due: number; act: () => void }[] = []
  const page = {
    visibilityState: "visible" as DocumentVisibilityState,
    addEventListener: (_: string, changed: unknown) => {
      look = changed as () => void
    },
  }
  watchReturn({ session, page, now: () => at, later: (act, ms) => waiting.push({ due: at + ms, act }) })
  const turn = (to: DocumentVisibilityState) => {
    page.visibilityState = to
    look()
  }
  /** Time passes; a running ear shows itself five times a second. */
  const pass = (ms: number, running: boolean) => {
    for (const end = at + ms; at < end; at += 200) {
      if (running) session.show({ ...session.snapshot() })
      for (const one of waiting.filter(({ due }) => due <= at)) {
        waiting.splice(waiting.indexOf(one), 1)
        one.act()
      }
    }
  }
  return { session, turn, pass }
}

test("an ear that ran on while the page was away is left alone", () => {
  const { session, turn, pass } = setUp(listening)
  turn("hidden")
  pass(60_000, true)
  turn("visible")
  pass(3000, true)
  expect(session.asked).toEqual([])
})

test("an ear that slept and woke by itself is said to have slept", () => {
  const { session, turn, pass } = setUp(listening)
  turn("hidden")
  pass(60_000, false)
  turn("visible")
  pass(3000, true)
  expect(session.asked).toEqual([["prompt", sleptWords, true]])
})

test("an ear that stays silent is started again, and that is said", () => {
  const { session, turn, pass } = setUp(listening)
  turn("hidden")
  pass(60_000, false)
  turn("visible")
  pass(3000, false)
  expect(session.asked).toEqual([
    ["listen", true],
    ["prompt", sleptWords, true],
  ])
})

test("an ear that lost its microphone meanwhile says how it goes on", () => {
  const { session, turn, pass } = setUp(listening)
  turn("hidden")
  session.show({ ...listening, ear: { ...listening.ear, state: "stopped" } })
  pass(5000, false)
  turn("visible")
  pass(3000, false)
  expect(session.asked).toEqual([["prompt", stoppedWords, true]])
})

test("an ear that was off stays off, and nothing is said", () => {
  const { session, turn, pass } = setUp(restingView)
  turn("hidden")
  pass(60_000, false)
  turn("visible")
  pass(3000, false)
  expect(session.asked).toEqual([])
})
