// @vitest-environment happy-dom
/** The worker's screen in its states: what stands on it, and what a tap or a key asks of the session. */
import { act } from "react"
import { createRoot, type Root } from "react-dom/client"
import { afterEach, beforeEach, expect, test } from "vitest"
import { App } from "../../src/app/App"
import type { SessionView } from "../../src/app/Session"
import { openWarnings, warningKey } from "../../src/dialogue/warningKey"
import { createMadeUpSession } from "./createMadeUpSession"
import { madeUpViews } from "./madeUpViews"

let root: Root
let page: HTMLElement

beforeEach(() => {
  Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true })
  page = document.createElement("div")
  document.body.append(page)
  root = createRoot(page)
})

afterEach(() => {
  act(() => root.unmount())
  page.remove()
})

const open = (view: SessionView) => {
  const session = createMadeUpSession(view)
  act(() => root.render(<App session={session} />))
  return session
}

const words = (where: string) => [...page.querySelectorAll(where)].map((one) => one.textContent?.trim() ?? "")

const button = (name: RegExp, within = "body") => {
  const found = [...document.querySelectorAll<HTMLElement>(`${within} button`)].find((one) => {
    return name.test(one.getAttribute("aria-label") ?? one.textContent ?? "")
  })
  if (!found) throw new Error(`There is no button ${name}`)
  return found
}

const tap = (name: RegExp, within?: string) => act(() => button(name, within).click())

const typeInto = (selector: string, text: string) => {
  const field = page.querySelector<HTMLInputElement | HTMLSelectElement>(selector)
  if (!field) throw new Error(`There is no field ${selector}`)
  const prototype = field instanceof HTMLSelectElement ? HTMLSelectElement.prototype : HTMLInputElement.prototype
  act(() => {
    Object.getOwnPropertyDescriptor(prototype, "value")?.set?.call(field, text)
    field.dispatchEvent(new Event(field instanceof HTMLSelectElement ? "change" : "input", { bubbles: true }))
  })
}

const submit = (form: string) =>
  act(() => {
    page.querySelector(form)?.dispatchEvent(new Event("submit", { bubbles: true, cancelable: true }))
  })

const press = (key: string, more: KeyboardEventInit = {}, target: EventTarget = document.body) =>
  act(() => {
    target.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true, cancelable: true, ...more }))
  })

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

test("the loading of the ear is shown in words and as a bar", () => {
  open(madeUpViews.startFirst())
  expect(words(".ear-loading label")).toEqual(["Getting the ear ready: 42 %"])
  expect(page.querySelector("progress")?.value).toBe(42)
})

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
  const shape = page.querySelector(".ear-shape path")?.getAttribute("d")
  expect(words(".ear-words")).toEqual([said])
  act(() => root.render(<App session={createMadeUpSession({ ...view, ear: { ...view.ear, state: "listening" } })} />))
  const same = page.querySelector(".ear-shape path")?.getAttribute("d") === shape
  expect(same).toBe(state === "listening")
})

test("a paused ear says how it is woken, and Listen wakes it through the loop", () => {
  const view = madeUpViews.emptyJob()
  const session = open({ ...view, dialogue: { ...view.dialogue, listening: false } })
  expect(words(".ear-words")).toEqual(["Paused. Say “start listening”"])
  tap(/^Listen$/)
  expect(session.asked).toEqual([["send", { type: "tapped", act: { kind: "start_listening" } }]])
})

test("an open warning names value, limit, act and clause, and is announced at once", () => {
  const view = madeUpViews.warningOpen()
  const [worst, other] = openWarnings(view.dialogue.record, view.dialogue.checked.findings)
  open(view)
  const [first, second] = words(".warning")
  for (const said of [worst!.spoken, worst!.shown, "BS 7671, 2018+A2:2022, 544.1.1", "4 mm²", "10 mm²", "not answered"])
    expect(first).toContain(said)
  expect(first).toMatch(/^Stop/)
  expect(second).toMatch(/^Warning/)
  expect(second).toContain(other!.spoken)
  expect([...page.querySelectorAll("details.warning")].map((one) => one.hasAttribute("open"))).toEqual([true, false])
  expect(words("[role=alert]").join(" ")).toContain(`Warning. ${worst!.spoken}`)
})

test("of two warnings alike, the one spoken last stands first and open", () => {
  const view = madeUpViews.warningOpen()
  const { checked } = view.dialogue
  const findings = checked.findings.map((one) =>
    one.severity === "stop" ? { ...one, severity: "warn" as const } : one,
  )
  const record = { ...view.dialogue.record, warnings: view.dialogue.record.warnings.toReversed() }
  open({ ...view, dialogue: { ...view.dialogue, record, checked: { ...checked, findings } } })
  expect(words(".warning[open] h3")[0]).toContain("Water")
  act(() =>
    root.render(
      <App
        session={createMadeUpSession({ ...view, dialogue: { ...view.dialogue, checked: { ...checked, findings } } })}
      />,
    ),
  )
  expect(words(".warning h3")[0]).toContain("Heating")
})

test("a warning marks the value it is about, and not the supply it was worked out with", () => {
  open(madeUpViews.warningOpen())
  expect(words(".warned .value")).toEqual(["over range, > 99.9 kΩ", "4 mm²"])
})

test("a warning is kept only with a reason, and the tap names the warning", () => {
  const view = madeUpViews.warningOpen()
  const session = open(view)
  tap(/Keep it because/)
  submit(".keep-form")
  expect(session.asked).toEqual([])
  typeInto(".keep-form input", "old bond, being replaced")
  submit(".keep-form")
  expect(session.asked).toEqual([
    [
      "send",
      {
        type: "tapped",
        act: { kind: "keep_it", reason: "old bond, being replaced" },
        about: warningKey(view.dialogue.checked.findings[0]!),
      },
    ],
  ])
})

test("a warning is put right from its card by changing the value behind it", () => {
  const session = open(madeUpViews.warningOpen())
  tap(/Change size 4 mm²/)
  tap(/Change it/, "dialog")
  typeInto("#change-value", "10")
  submit(".change-form")
  expect(session.asked).toEqual([
    [
      "send",
      {
        type: "entered",
        facts: [{ kind: "conductor_csa", value: 10, unit: "mm2", subject: "water" }],
        reason: "changed on the screen",
      },
    ],
  ])
  expect(page.querySelector("dialog")).toBeNull()
})

test("values of other items that a warning was worked out with can be opened from it", () => {
  open(madeUpViews.warningOpen())
  expect(words(".others .value-label").slice(0, 2)).toEqual(["Supply, earthing", "Supply, neutral"])
  tap(/Supply, neutral/, ".others")
  expect(words("dialog h2")).toEqual(["Supply, neutral"])
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

test("a warning that was kept stays to be read with its reason", () => {
  open(madeUpViews.busyJob())
  expect(page.querySelector(".warning")).toBeNull()
  expect(words(".remark").join(" ")).toContain("Reason given: “old bond, being replaced on Thursday”")
})

test("keys answer as the buttons do, but never from a field or with a modifier", () => {
  const session = open(madeUpViews.readingWaits())
  for (const key of ["y", "N", "u", "r", "x"]) press(key)
  press("y", { ctrlKey: true })
  press("y", { repeat: true })
  press("y", {}, page.querySelector("#sentence")!)
  const acts = session.asked.map((one) => (one[1] as { act: { kind: string } }).act.kind)
  expect(acts).toEqual(["confirm", "deny", "undo", "repeat"])
})

test("a typed sentence goes through the interpreter and leaves the field empty", () => {
  const session = open(madeUpViews.emptyJob())
  typeInto("#sentence", " gas ten square ")
  submit(".sentence")
  expect(session.asked).toEqual([["type", "gas ten square"]])
  expect(page.querySelector<HTMLInputElement>("#sentence")?.value).toBe("")
})

test("every value of the record is a button, with its unit and its state in words", () => {
  open(madeUpViews.warningOpen())
  const rows = words(".value-row")
  expect(rows).toContain("Reading0.01 Ωsaid yes")
  expect(rows).toContain("Length11 mby hand")
  expect(rows).toContain("Readingover range, > 99.9 kΩwarningsaid yes")
  expect(rows).toContain("Size4 mm²warningjust said")
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
    expect(page.textContent).not.toMatch(/\bsafe\b/i)
  }
})

test("no style attribute is used, since the page's own policy blocks it", () => {
  for (const make of Object.values(madeUpViews)) {
    open(make())
    expect(page.querySelectorAll("[style]").length).toBe(0)
  }
})
