// @vitest-environment happy-dom
/** The screens of an open job: which one the address names, and the ways from a finding to its values. */
import { afterEach, beforeEach, expect, test } from "vitest"
import { madeUpViews } from "./madeUpViews"
import { clearPage, find, layPage, open, tap, words } from "./page"

beforeEach(layPage)
afterEach(clearPage)

test.each(["now", "picture", "record", "findings"])("the address #%s names its screen and marks its way", (screen) => {
  open(madeUpViews.busyJob(), screen)
  expect(find(".job")?.dataset.screen).toBe(screen)
  expect(find(".job-nav [aria-current=page]")?.getAttribute("href")).toBe(`#${screen}`)
})

test("an address that names no screen shows the moment", () => {
  open(madeUpViews.busyJob(), "nowhere")
  expect(find(".job")?.dataset.screen).toBe("now")
})

test("the way to the findings tells how many warnings are open, and the worst stands above every screen", () => {
  open(madeUpViews.warningOpen(), "record")
  expect(words(".job-nav .nav-findings")).toEqual(["Findings2 open"])
  expect(words(".warning-strip")).toEqual([
    "Water: four square is too small. Ten is the least. Fit a bigger one. And 1 more.",
  ])
  open(madeUpViews.emptyJob(), "record")
  expect(words(".nav-count, .warning-strip")).toEqual([])
})

test("findings stand by what became of them, and each leads to the words of its values", () => {
  open(madeUpViews.busyJob(), "findings")
  expect(words(".remarks-head")).toEqual(["Kept on purpose", "Notes", "Fits"])
  tap(/size 4 mm²/, ".findings")
  expect(words("dialog").join(" ")).toContain("“no four square”")
})

test("with nothing open the findings say how far that goes", () => {
  open(madeUpViews.emptyJob(), "findings")
  expect(words(".findings").join()).toContain("No warning is open. That says nothing of what was not told")
})
