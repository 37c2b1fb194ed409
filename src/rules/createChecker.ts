/**
 * Judges a situation by all the rules of a pack. A rule is asked again only when a value that it looks at has changed;
 * what it said last time is remembered in the checker, and the answer is the same as without remembering.
 */
import type { Checked, Finding, Missing, Severity } from "../facts/Finding"
import type { ItemSituation, Situation } from "../facts/Situation"
import { kindOfItem } from "./itemKind"
import type { Pack } from "./Pack"
import type { Rule, Values, Verdict } from "./Rule"
import { missingFor, type NamedValues, valuesOf } from "./valuesOf"

export interface Checker {
  /** Findings worst first, then in the order of the items and of the rules; `missing` once for each value. */
  check(situation: Situation): Checked
}

interface Judged {
  key: string
  finding: Finding | null
  missing: readonly Missing[]
}

const severities: readonly Severity[] = ["stop", "warn", "note", "ok"]

const toFinding = (rule: Rule, verdict: Verdict, rests: string[], item: string | undefined): Finding | null => {
  if (verdict.verdict !== "passes" && verdict.verdict !== "fails") return null
  return {
    rule: rule.name,
    ...(item !== undefined && { item }),
    severity: verdict.verdict === "passes" ? "ok" : verdict.severity,
    ...(verdict.which !== undefined && { which: verdict.which }),
    spoken: verdict.spoken,
    shown: verdict.shown,
    source: rule.source,
    status: verdict.status ?? rule.status,
    rests,
    inputs: verdict.inputs ?? {},
    ...(verdict.working && { working: verdict.working }),
  }
}

const judgeOnce = (rule: Rule, values: NamedValues, item: string | undefined, key: string): Judged => {
  const plain: Values = Object.fromEntries(rule.needs.map((name) => [name, values[name]?.value]))
  const verdict = rule.judge(plain)
  const rests = [...new Set(rule.needs.flatMap((name) => values[name]?.entry ?? []))]
  const names = verdict.verdict === "asks" ? verdict.missing : "wants" in verdict ? (verdict.wants ?? []) : []
  const missing = names.flatMap((name) => missingFor(rule.name, name, item) ?? [])
  return { key, finding: toFinding(rule, verdict, rests, item), missing }
}

/** Each value once, for the first rule that wants it. */
const withoutRepeats = (missing: readonly Missing[]) =>
  missing.filter((one, at) => missing.findIndex((other) => other.kind === one.kind && other.item === one.item) === at)

const appliesTo = (rule: Rule, of: ItemSituation | null) =>
  of === null ? rule.of.includes("job") : rule.of.includes(kindOfItem(of.item))

export const createChecker = (pack: Pack): Checker => {
  const remembered = new Map<string, Judged>()

  const judge = (rule: Rule, values: NamedValues, of: ItemSituation | null): Judged => {
    const place = `${rule.name}|${of?.item ?? ""}`
    const key = JSON.stringify(rule.needs.map((name) => values[name] ?? null))
    const before = remembered.get(place)
    if (before?.key === key) return before
    const fresh = judgeOnce(rule, values, of?.item, key)
    remembered.set(place, fresh)
    return fresh
  }

  return {
    check(situation) {
      const judged = [null, ...situation.items].flatMap((of) => {
        const values = valuesOf(situation, of)
        return pack.rules.filter((rule) => appliesTo(rule, of)).map((rule) => judge(rule, values, of))
      })
      const findings = judged.flatMap((one) => one.finding ?? [])
      const sorted = severities.flatMap((severity) => findings.filter((finding) => finding.severity === severity))
      return { findings: sorted, missing: withoutRepeats(judged.flatMap((one) => one.missing)) }
    },
  }
}
