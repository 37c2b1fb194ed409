// @vitest-environment happy-dom
/** Open warnings: what they say, and the two ways out of them. */
import { afterEach, beforeEach, expect, test } from "vitest"
import { openWarnings, warningKey } from "../../src/record/warningKey"
import { madeUpViews } from "./madeUpViews"
import { clearPage, find, findAll, layPage, open, submit, tap, typeInto, words } from "./page"

beforeEach(layPage)
afterEach(clearPage)

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
  expect(findAll("details.warning").map((one) => one.hasAttribute("open"))).toEqual([true, false])
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
  open({ ...view, dialogue: { ...view.dialogue, checked: { ...checked, findings } } })
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
  expect(find("dialog")).toBeNull()
})

test("values of other items that a warning was worked out with can be opened from it", () => {
  open(madeUpViews.warningOpen())
  expect(words(".others .value-label").slice(0, 2)).toEqual(["Supply, earthing", "Supply, neutral"])
  tap(/Supply, neutral/, ".others")
  expect(words("dialog h2")).toEqual(["Supply, neutral"])
})

test("a warning that was kept stays to be read with its reason", () => {
  open(madeUpViews.busyJob(), "findings")
  expect(find(".warning")).toBeNull()
  expect(words(".remark").join(" ")).toContain("Reason given: “old bond, being replaced on Thursday”")
})
