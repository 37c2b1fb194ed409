/** The plan is data: the usual one asks for what its job needs, and a plan of another trade works by the same code. */
import { readdirSync } from "node:fs"
import { expect, test } from "vitest"
import { emptyDialogue } from "../../src/dialogue/emptyDialogue"
import { JobPlan } from "../../src/dialogue/JobPlan"
import { leftOf, missingOf, nextOf, whatsLeft } from "../../src/dialogue/plan"
import { step } from "../../src/dialogue/step"
import type { Tools } from "../../src/dialogue/Tools"
import { usualPlan } from "../../src/dialogue/usualPlan"
import { RecordedFact, Step } from "../../src/facts/Fact"
import { emptyRecord, type JobRecord } from "../../src/record/JobRecord"
import type { LogLine } from "../../src/record/LogLine"
import { applyLine } from "../../src/record/project"
import { realTools } from "../realTools"
import tinyPlan from "./tinyPlan.json"

const at = "2026-03-02T09:00:00Z"

const recordOf = (...facts: unknown[]): JobRecord =>
  facts.reduce<JobRecord>((record, fact, seq) => {
    const stamp = { v: 1, id: `e${seq}`, job: "job", at, by: "worker", device: "test", seq } as const
    const origin = { by: "hand", reason: "typed" } as const
    const line: LogLine = { ...stamp, type: "entry", fact: RecordedFact.parse(fact), origin, needsYes: false }
    return applyLine(record, line)
  }, emptyRecord)

const done = (value: string, subject?: string) => ({ kind: "step_done", value, ...(subject && { subject }) })
const part = (value: string) => ({ kind: "service", value })
const arrangement = (value: string) => ({ kind: "earthing_arrangement", value })

test("every want of every plan is a fact or a step that can be said, and stages that come before are there", () => {
  const kinds = RecordedFact.options.map((one) => one.shape.kind.value as string)
  for (const plan of [usualPlan, JobPlan.parse(tinyPlan)]) {
    const names = plan.stages.map((stage) => stage.name)
    expect(new Set(names).size).toBe(names.length)
    for (const stage of plan.stages) {
      expect(names).toEqual(expect.arrayContaining(stage.after))
      for (const { want } of stage.wants) {
        if (want.startsWith("step:")) expect(Step.options).toContain(want.slice(5))
        else expect(kinds).toContain(want)
      }
    }
  }
  expect(readdirSync("src/dialogue/plans").length).toBeGreaterThan(0)
})

test("what applies depends on how the supply is earthed", () => {
  const wants = (value: string) => leftOf(recordOf(arrangement(value))).map((one) => `${one.item} ${one.wanted}`)
  expect(wants("TN-C-S")).toContain("supply neutral_csa")
  expect(wants("TN-S")).not.toContain("supply neutral_csa")
  expect(wants("TT")).toContain("electrode resistance")
  expect(wants("TN-S")).not.toContain("electrode resistance")
})

test("and on the part: steel is no pipe, heating comes in nowhere, and what needs no bond wants nothing", () => {
  const missing = (item: string) => missingOf(recordOf(part(item)), item)
  expect(missing("water")).toEqual(expect.arrayContaining(["distance", "step:pipe_cleaned"]))
  expect(missing("structural_steel")).not.toContain("step:pipe_cleaned")
  expect(missing("heating")).toContain("step:pipe_cleaned")
  expect(missing("heating")).not.toContain("distance")
  const surveyed = (value: string) =>
    missingOf(recordOf(part("oil"), { kind: "survey", value, subject: "oil" }), "oil").length
  expect(surveyed("needs_bond")).toBeGreaterThan(0)
  for (const value of ["needs_no_bond", "plastic_at_entry", "not_here"]) expect(surveyed(value)).toBe(0)
})

test("what comes next is of the current part, unless something has to come before it", () => {
  const fitted = ["conductor_run", "pipe_cleaned", "clamp_fitted", "label_fitted"].map((one) => done(one, "water"))
  const values = [
    { kind: "conductor_csa", value: 10, unit: "mm2", subject: "water" },
    { kind: "length", value: 8, unit: "m", subject: "water" },
    { kind: "distance", value: 200, unit: "mm", subject: "water" },
  ]
  const built = recordOf(part("water"), ...values, ...fitted)
  expect(nextOf(recordOf(part("water")), "water")).toMatchObject({ item: "water", wanted: "conductor_csa" })
  expect(nextOf(built, "water")).toMatchObject({ item: "supply", wanted: "step:tester_proved_before" })
  expect(nextOf(recordOf(), null)).toMatchObject({ item: "job", wanted: "step:risk_checked" })
})

test("another kind of job is another file: the loop answers out of it", () => {
  const plan = JobPlan.parse(tinyPlan)
  expect(whatsLeft(emptyRecord, plan)).toEqual([
    { item: "test_leads", wanted: ["step:leads_nulled"] },
    { item: "supply", wanted: ["polarity"] },
  ])
  let count = 0
  const tools: Tools = { ...realTools(), plan, newId: () => `e${++count}` }
  const opened = { type: "opened", at, job: "job", place: "The bakery", pack: "uk-bs7671" } as const
  let state = step(emptyDialogue("test"), opened, tools).state
  const say = (text: string): string[] => {
    const heard = {
      id: `h${++count}`,
      text,
      alternatives: [],
      words: [],
      start: 0,
      end: 1,
      engine: "typed",
      margin: null,
    }
    const stepped = step(state, { type: "heard", at, heard }, tools)
    state = stepped.state
    return stepped.effects.flatMap((effect) => (effect.do === "say" ? [effect.words] : []))
  }
  expect(say("what next")).toEqual(["Test leads: null."])
  say("leads nulled")
  expect(say("what's left")).toEqual(["Supply: polarity."])
  say("polarity correct")
  expect(say("sign it off")).toEqual(["Nothing is left. Do you put your name to it?"])
})
