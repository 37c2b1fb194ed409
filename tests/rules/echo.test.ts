/**
 * What the rules say aloud, heard back by the app's own ear, claims nothing that is not on record already: no limit, no
 * expected value and no step that was only asked for. It holds whatever question stands open.
 */
import { expect, test } from "vitest"
import { loadLoopTools } from "../../src/cli/loopTools"
import { Heard } from "../../src/facts/Heard"
import { packs } from "../../src/rules/packs"
import type { Example } from "../../src/rules/Rule"
import { must } from "./comparing"

const { interpret } = must(loadLoopTools("uk-bs7671"))

const stepOf: Record<string, string> = {
  pipeCleaned: "pipe_cleaned",
  clampFitted: "clamp_fitted",
  labelFitted: "label_fitted",
  oneEndOff: "one_end_disconnected",
  readWithOneEndOff: "one_end_disconnected",
  readWithLeadsNulled: "leads_nulled",
  connectedToMet: "connected_to_met",
  provedDead: "isolated_proved_dead",
}
const recorded = ({ given }: Example) =>
  Object.entries(given).flatMap(([name, value]) => (value === true ? [stepOf[name]] : [value]))

const cases = packs.flatMap((pack) =>
  pack.rules.flatMap((rule) =>
    rule.examples.flatMap((example) => {
      const verdict = rule.judge(example.given)
      return "spoken" in verdict ? [{ spoken: verdict.spoken, example }] : []
    }),
  ),
)
const asked = ["resistance", "conductor_csa", "step:label_fitted"]

test.each([...new Map(cases.map((one) => [one.spoken, one])).values()].map((one) => [one.spoken, one] as const))(
  "%s",
  (spoken, { example }) => {
    const item = String(example.given.item ?? "water")
    const plain = spoken.toLowerCase().replace(/[.,:?]/g, "")
    const contexts = [{}, ...asked.map((kind) => ({ item, asked: kind }))]
    for (const context of contexts) {
      const heard = Heard.parse({ id: "echo", text: plain, start: 0, end: 1, engine: "offline" })
      const { facts, command } = interpret(heard, context)
      const values = facts.flatMap((fact) => (fact.kind === "service" ? [] : [fact.value]))
      expect(values.filter((value) => !recorded(example).includes(value))).toEqual([])
      expect(command).toBe(null)
    }
  },
)
