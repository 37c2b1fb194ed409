/** A figure that was only remembered never passes and never fails anything: it makes a note to check the book. */
import { expect, test } from "vitest"
import { z } from "zod"
import { packs } from "../../src/rules/packs"
import { defineRule, fails, passes } from "../../src/rules/Rule"

const says = { spoken: "Check the book.", shown: "Four." }
const rule = (status: "direct" | "memory", own?: "memory") =>
  defineRule({
    name: "made",
    title: "Made up for this test.",
    source: { standard: "none", edition: "none", clause: "none" },
    status,
    of: ["job"],
    needs: z.object({ csaMm2: z.number() }),
    limits: { leastMm2: 4 },
    judge({ csaMm2 }, { leastMm2 }) {
      const status = own ? { status: own } : {}
      return csaMm2 >= leastMm2 ? passes({ ...says, ...status }) : fails("stop", { ...says, ...status })
    },
    examples: [],
  })

test.each([
  ["the rule's figure", rule("memory")],
  ["the figure that was used", rule("direct", "memory")],
])("from memory, %s: good and bad both become a note", (_, made) => {
  for (const csaMm2 of [4, 2.5]) {
    const verdict = made.judge({ csaMm2 })
    expect(verdict).toMatchObject({ verdict: "fails", severity: "note", status: "memory" })
    expect(verdict).toMatchObject({ shown: expect.stringContaining("book") })
  }
})

test("a figure that was seen does both", () => {
  expect(rule("direct").judge({ csaMm2: 4 }).verdict).toBe("passes")
  expect(rule("direct").judge({ csaMm2: 2.5 })).toMatchObject({ verdict: "fails", severity: "stop" })
  expect(rule("direct").judge({})).toEqual({ verdict: "asks", missing: ["csaMm2"] })
})

test("in every pack, what rests on memory says so and is a note", () => {
  const verdicts = packs.flatMap((pack) => pack.rules.flatMap((one) => one.examples.map((ex) => one.judge(ex.given))))
  const fromMemory = verdicts.filter((verdict) => "status" in verdict && verdict.status === "memory")
  expect(fromMemory.length).toBeGreaterThan(0)
  expect(fromMemory.filter((verdict) => verdict.verdict !== "fails" || verdict.severity !== "note")).toEqual([])
})
