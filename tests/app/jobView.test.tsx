// @vitest-environment happy-dom
/** The open job: what stands on it, and what a tap or a key asks of the session. */
import { afterEach, beforeEach, expect, test } from "vitest"
import { madeUpViews } from "./madeUpViews"
import { button, clearPage, find, layPage, open, press, submit, tap, typeInto, words } from "./page"

beforeEach(layPage)
afterEach(clearPage)

test("a reading that waits stands large, and Yes is marked as awaited", () => {
  open(madeUpViews.readingWaits())
  expect(words(".read-value")).toEqual(["0.01 Ω"])
  expect(words(".asked .state")).toEqual(["Is that it? Yes or no."])
  expect(button(/^Yes$/).className).toContain("waits")
  expect(words(".ear-words")).toEqual(["Talking, so not listening"])
})

test("the buttons say what a yes would be about, and say nothing while nothing waits", () => {
  open(madeUpViews.readingWaits())
  expect(words(".awaited")).toEqual(["Yes or no to Gas: reading 0.01 Ω"])
  open(madeUpViews.warningOpen())
  expect(words(".awaited")).toEqual(["Yes or no to Water: size 4 mm²"])
  for (const calm of [madeUpViews.emptyJob(), madeUpViews.busyJob()]) {
    open(calm)
    expect(words(".awaited")).toEqual([])
    expect(button(/^Yes$/).className).not.toContain("waits")
  }
})

test.each([
  ["starting", "Getting ready"],
  ["listening", "Listening"],
  ["speech", "Hearing you"],
  ["deaf", "Talking, so not listening"],
  ["stopped", "Not listening"],
] as const)("the ear state %s has a word and a shape of its own", (state, said) => {
  const view = madeUpViews.emptyJob()
  open({ ...view, ear: { ...view.ear, state } })
  const shape = find(".ear-shape path")?.getAttribute("d")
  expect(words(".ear-words")).toEqual([said])
  open({ ...view, ear: { ...view.ear, state: "listening" } })
  const same = find(".ear-shape path")?.getAttribute("d") === shape
  expect(same).toBe(state === "listening")
})

test("a paused ear says how it is woken, and Listen wakes it through the loop", () => {
  const view = madeUpViews.emptyJob()
  const session = open({ ...view, dialogue: { ...view.dialogue, listening: false } })
  expect(words(".ear-words")).toEqual(["Paused. Say “start listening”"])
  tap(/^Listen$/)
  expect(session.asked).toEqual([["send", { type: "tapped", act: { kind: "start_listening" } }]])
})

test("a tapped value shows its words, its state and what stood there before", () => {
  const view = madeUpViews.warningOpen()
  const session = open(view)
  tap(/4 mm²/, ".item-current")
  const sheet = words("dialog").join(" ")
  expect(sheet).toContain("“no four square”")
  expect(sheet).toContain("just said")
  expect(words(".history li")).toEqual([expect.stringContaining("6 mm²taken back")])
  tap(/Take it back/, "dialog")
  const entry = view.dialogue.readBack?.main
  expect(session.asked).toEqual([["send", { type: "tapped", act: { kind: "deny", value: true }, about: entry }]])
})

test("what is typed by hand is refused when it is no number, and over range stays a state", () => {
  const session = open(madeUpViews.warningOpen())
  tap(/over range/, ".record")
  tap(/Change it/, "dialog")
  typeInto("#change-value", "lots")
  submit(".change-form")
  expect(words(".refused")).toEqual(["Reading: type the digits only, such as 0.05 or 10."])
  typeInto("#change-value", "199,9")
  submit(".change-form")
  expect(session.asked.map((one) => (one[1] as { facts: unknown[] }).facts)).toEqual([
    [{ kind: "resistance", value: 199.9, unit: "ohm", qualifier: ">", subject: "heating" }],
  ])
})

test("a candidate that is picked by tap goes in as it was offered", () => {
  const session = open(madeUpViews.busyJob())
  tap(/16 mm²/, ".candidates")
  expect(session.asked).toEqual([["send", expect.objectContaining({ type: "entered" })]])
  expect(words(".asked-words")).toEqual(["Was that six, or sixteen square?"])
})

test("keys answer as the buttons do, but never from a field or with a modifier", () => {
  const session = open(madeUpViews.readingWaits())
  for (const key of ["y", "N", "u", "r", "x"]) press(key)
  press("y", { ctrlKey: true })
  press("y", { repeat: true })
  press("y", {}, find("#sentence")!)
  const acts = session.asked.map((one) => (one[1] as { act: { kind: string } }).act.kind)
  expect(acts).toEqual(["confirm", "deny", "undo", "repeat"])
})

test("a typed sentence goes through the interpreter and leaves the field empty", () => {
  const session = open(madeUpViews.emptyJob())
  typeInto("#sentence", " gas ten square ")
  submit(".sentence")
  expect(session.asked).toEqual([["type", "gas ten square"]])
  expect(find<HTMLInputElement>("#sentence")?.value).toBe("")
})

test("every value of the record is a button, with its unit and its state in words", () => {
  open(madeUpViews.warningOpen())
  const rows = words(".value-row")
  expect(rows).toContain("Reading0.01 Ωsaid yes")
  expect(rows).toContain("Length11 mby hand")
  expect(rows).toContain("Readingover range, > 99.9 kΩwarningsaid yes")
  expect(rows).toContain("Size4 mm²warningjust said")
})
