// @vitest-environment happy-dom
/** The page before a job is open, and what holds for every page. */
import { act } from "react"
import { afterEach, beforeEach, expect, test } from "vitest"
import { madeUpViews } from "./madeUpViews"
import { clearPage, find, findAll, layPage, open, submit, tap, typeInto, words } from "./page"

beforeEach(layPage)
afterEach(clearPage)

test("the start page opens a job only once it has a place", () => {
  const session = open(madeUpViews.start())
  submit(".new-job")
  expect(session.asked).toEqual([])
  typeInto("#place", "  Village hall  ")
  submit(".new-job")
  expect(session.asked).toEqual([["newJob", "Village hall"]])
})

test("the start page says that this is advice, who decides, and that nothing leaves the device", () => {
  open(madeUpViews.start())
  const cautions = words(".cautions").join(" ")
  expect(cautions).toMatch(/advice from the edition/)
  expect(cautions).toMatch(/local rules and the network operator/)
  expect(cautions).toMatch(/competent person decides and signs/)
  expect(cautions).toMatch(/Nothing leaves this device/)
})

test("the start page takes up a stored job, plays the sample and closes a notice", () => {
  const session = open(madeUpViews.startTrouble())
  tap(/Village hall/)
  tap(/sample job/)
  tap(/Close: The microphone was refused/)
  expect(session.asked).toEqual([["resumeJob", "b"], ["hearSample"], ["dismiss", "1"]])
  expect(words("[role=alert]")).toEqual([expect.stringContaining("microphone was refused")])
})

test("the first lesson is offered until it was taken or put aside, and can be left before it begins", () => {
  const session = open(madeUpViews.start(), "lesson")
  expect(words(".lesson-card h2")).toEqual(["One minute, by voice"])
  tap(/^Skip$/)
  expect(session.settings.snapshot().lessonSeen).toBe(true)
  expect(window.location.hash).toBe("#jobs")
  expect(session.asked).toEqual([])
  open(madeUpViews.start())
  expect(words(".lesson-offer h2")).toEqual(["First time here?"])
  tap(/^Not now$/)
  expect(words(".lesson-offer")).toEqual([])
})

test("the loading of the ear is shown in words and as a bar", () => {
  open(madeUpViews.startFirst())
  expect(words(".ear-loading label")).toEqual(["Getting the ear ready: 42 %"])
  expect(find<HTMLProgressElement>("progress")?.value).toBe(42)
})

test("the page follows the session", () => {
  const session = open(madeUpViews.opening())
  expect(words("[role=status]")).toEqual(["Looking for jobs on this device."])
  act(() => session.show(madeUpViews.emptyJob()))
  expect(words("h1")).toEqual(["Bakery, flat above"])
})

test("no screen ever calls an installation safe", () => {
  for (const make of Object.values(madeUpViews)) {
    open(make())
    expect(document.body.textContent).not.toMatch(/\bsafe\b/i)
  }
})

test("no style attribute is used, since the page's own policy blocks it", () => {
  for (const make of Object.values(madeUpViews)) {
    open(make())
    expect(findAll("[style]").length).toBe(0)
  }
})
