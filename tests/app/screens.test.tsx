// @vitest-environment happy-dom
/** The screens of an open job: which one the address names, and the ways from a finding to its values. */
import { afterEach, beforeEach, expect, test } from "vitest"
import { madeUpViews } from "./madeUpViews"
import { clearPage, find, layPage, open, settle, tap, words } from "./page"

beforeEach(layPage)
afterEach(clearPage)

test.each(["now", "picture", "record", "findings", "sign-off"])(
  "the address #%s names its screen and marks its way",
  (screen) => {
    open(madeUpViews.busyJob(), screen)
    expect(find(".job")?.dataset.screen).toBe(screen)
    expect(find(".job-nav [aria-current=page]")?.getAttribute("href")).toBe(`#${screen}`)
  },
)

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

test("before signing everything open is named, and each line leads to it", () => {
  const session = open(madeUpViews.signOffAsked(), "sign-off")
  expect(words(".sign-lines h3")).toEqual(["Open warnings: 2", expect.stringMatching(/^Not said yet: \d+$/)])
  tap(/^Yes, sign off$/)
  tap(/^No, not yet$/)
  tap(/Heating: the meter finds no way/, ".sign-lines")
  const acts = session.asked.map((one) => (one[1] as { act: { kind: string } }).act.kind)
  expect(acts).toEqual(["confirm", "deny"])
  expect(window.location.hash).toBe("#findings")
})

test("signing is asked of the loop, and what was left open stays to be read", () => {
  const session = open(madeUpViews.warningOpen(), "sign-off")
  tap(/^Sign off this job$/)
  expect(session.asked).toEqual([["send", { type: "tapped", act: { kind: "sign_off" } }]])
  open(madeUpViews.signedOff(), "sign-off")
  expect(words(".signed").join()).toContain("Signed off 2 Mar 2026, 10:12, by the worker")
  expect(words(".signed").join()).toContain("Left open: Water: reading.")
})

test("an alarm stands over everything and is ended by an answer only", () => {
  const session = open(madeUpViews.alarm(), "record")
  expect(find<HTMLDialogElement>("dialog.alarm")?.open).toBe(true)
  tap(/all right/, ".alarm")
  expect(session.asked).toEqual([["send", { type: "tapped", act: { kind: "all_right" } }]])
  open(madeUpViews.emptyJob())
  expect(find("dialog.alarm")).toBeNull()
})

test("settings are kept as they are tapped, in a job and before one", async () => {
  for (const view of [madeUpViews.emptyJob(), madeUpViews.start()]) {
    const session = open(view, "settings")
    await settle()
    tap(/^Louder$/)
    tap(/^Slower$/)
    expect(session.settings.snapshot()).toMatchObject({ volumeStep: 1, rateStep: -1 })
  }
})

test("check-ins are started by tap as by voice, with the minutes that were set", async () => {
  const session = open(madeUpViews.emptyJob(), "settings")
  await settle()
  tap(/^Check on me every 30 minutes$/)
  const act = { kind: "check_on_me", everyMinutes: 30 }
  expect(session.asked).toEqual([["send", { type: "tapped", act }]])
})
