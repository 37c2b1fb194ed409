/** What the rules say aloud: plain words only, nothing that answers a question, nothing that could be heard as a reading. */
import { expect, test } from "vitest"
import { packs } from "../../src/rules/packs"

const verdicts = packs.flatMap((pack) =>
  pack.rules.flatMap((rule) =>
    rule.examples.flatMap(({ given }) => {
      const verdict = rule.judge(given)
      return verdict.verdict === "passes" || verdict.verdict === "fails" ? [{ rule, given, verdict }] : []
    }),
  ),
)
const spoken = [...new Set(verdicts.map(({ verdict }) => verdict.spoken))]

test("there is enough to look at", () => {
  expect(spoken.length).toBeGreaterThan(60)
})

test.each(spoken)("%s", (sentence) => {
  expect(sentence).toMatch(/^[A-Z][A-Za-z ,.:?]*\.$/)
  expect(sentence).not.toMatch(/\b(yes|right|correct|confirm|safe|zero|no that)\b/i)
  expect(sentence.split(" ").length).toBeLessThanOrEqual(34)
})

test("a stop or a warning names its part, and says what to do", () => {
  const open = verdicts.filter(({ verdict }) => verdict.verdict === "fails" && verdict.severity !== "note")
  for (const { given, verdict } of open) {
    const name = String(given.item ?? "")
      .replaceAll("_", " ")
      .toLowerCase()
    expect(verdict.spoken.toLowerCase()).toContain(name)
    expect(verdict.spoken).toMatch(/Fit|Put|Move|test again|Isolate|Make|Work it out|See that|see that/)
  }
})

test("what is shown names the figure in digits with its unit, and never says that anything is safe", () => {
  for (const { verdict } of verdicts) expect(verdict.shown).not.toMatch(/\bis safe\b/i)
  const sized = verdicts.filter(({ rule }) => rule.name === "mainBondSize")
  for (const { verdict } of sized) expect(verdict.shown).toMatch(/^\d+(\.\d+)? mm²/)
})
