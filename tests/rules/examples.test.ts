/** Every rule is run on its own examples: at, just under and just over each limit, and with a value missing. */
import { describe, expect, test } from "vitest"
import { packs } from "../../src/rules/packs"

const rules = [...new Map(packs.flatMap((pack) => pack.rules).map((rule) => [rule.name, rule])).values()]

describe.each(rules.map((rule) => [rule.name, rule] as const))("%s", (_, rule) => {
  test.each(rule.examples.map((example) => [JSON.stringify(example.given), example] as const))(
    "%s",
    (_text, example) => {
      const verdict = rule.judge(example.given)
      expect(verdict.verdict).toBe(example.verdict)
      if (example.severity) expect(verdict).toMatchObject({ severity: example.severity })
      if (example.which) expect(verdict).toMatchObject({ which: example.which })
    },
  )

  test("has an example on each side", () => {
    const verdicts = new Set(rule.examples.map((example) => example.verdict))
    expect(verdicts.size).toBeGreaterThan(1)
  })
})
