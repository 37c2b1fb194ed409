/** The table of rules in DEVELOPERS.md is the one that the rules themselves give. */
import { readFileSync, writeFileSync } from "node:fs"
import { expect, test } from "vitest"
import { findPack } from "../../src/rules/packs"
import { rulesSummary } from "../../src/rules/rulesSummary"

test("the guide shows the rules as they are", () => {
  const guide = readFileSync("DEVELOPERS.md", "utf8")
  const [start, end] = ["<!-- rules: uk-bs7671 -->\n", "<!-- end -->"]
  const table = rulesSummary(findPack("uk-bs7671")!)
  const [before, rest = ""] = guide.split(start)
  const after = rest.slice(rest.indexOf(end))
  const wanted = `${before}${start}${table}\n${after}`
  if (process.env.ACCEPT) writeFileSync("DEVELOPERS.md", wanted)
  else expect(guide).toBe(wanted)
  expect(table.split("\n").length).toBeGreaterThan(15)
})
