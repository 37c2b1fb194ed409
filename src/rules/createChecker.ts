/**
 * Judges a situation by all the rules of a pack. An item is judged again only when one of its values has changed, and
 * then only by the rules that look at such a value; what they said last time is remembered in the checker, and the
 * answer is the same as without remembering.
 */
import type { Checked, Finding, Missing, Severity } from "../facts/Finding"
import type { ItemSituation, Situation } from "../facts/Situation"
import { kindOfItem } from "./itemKind"
import { itemValues, jobValues, missingFor, type NamedValue, type NamedValues, type ValueName } from "./namedValues"
import type { Pack } from "./Pack"
import type { Rule, Values, Verdict } from "./Rule"

export interface Checker {
  /** Findings worst first, then in the order of the items and of the rules; `missing` once for each value. */
  check(situation: Situation): Checked
}

interface Judged {
  looked: readonly (NamedValue | undefined)[]
  finding: Finding | null
  missing: readonly Missing[]
}

/** What all rules said of one item, or of the job as a whole, when it last had these values. */
interface Place {
  values: NamedValues
  byRule: Map<Rule, Judged>
  findings: readonly Finding[]
  missing: readonly Missing[]
}

const severities: readonly Severity[] = ["stop", "warn", "note", "ok"]

const toFinding = (rule: Rule, verdict: Verdict, rests: string[], item: string | undefined): Finding | null => {
  if (verdict.verdict !== "passes" && verdict.verdict !== "fails") return null
  const { spoken, shown, which, status, inputs, working } = verdict
  const severity = verdict.verdict === "passes" ? "ok" : verdict.severity
  const finding: Finding = {
    rule: rule.name,
    severity,
    spoken,
    shown,
    source: rule.source,
    status: status ?? rule.status,
    rests,
    inputs: inputs ?? {},
  }
  if (item !== undefined) finding.item = item
  if (which !== undefined) finding.which = which
  if (working !== undefined) finding.working = working
  return finding
}

const judgeOnce = (rule: Rule, item: string | undefined, looked: Judged["looked"]): Judged => {
  const plain: Values = {}
  const rests: string[] = []
  rule.needs.forEach((name, at) => {
    const one = looked[at]
    plain[name] = one?.value
    if (one?.entry !== undefined && !rests.includes(one.entry)) rests.push(one.entry)
  })
  const verdict = rule.judge(plain)
  const names = verdict.verdict === "asks" ? verdict.missing : "wants" in verdict ? (verdict.wants ?? []) : []
  const missing = names.flatMap((name) => missingFor(rule.name, name, item) ?? [])
  return { looked, finding: toFinding(rule, verdict, rests, item), missing }
}

/** Values are plain, or small objects that are equal when they are written alike. */
const isSame = (one: NamedValue | undefined, other: NamedValue | undefined) =>
  one === other ||
  (one?.entry === other?.entry &&
    (one?.value === other?.value ||
      (typeof one?.value === "object" && JSON.stringify(one.value) === JSON.stringify(other?.value))))

const areSame = (some: NamedValues, others: NamedValues): boolean => {
  const names = Object.keys(some) as ValueName[]
  return names.length === Object.keys(others).length && names.every((name) => isSame(some[name], others[name]))
}

/** Each value once, for the first rule that wants it. */
const withoutRepeats = (missing: readonly Missing[]): Missing[] => {
  const first = new Map<string, Missing>()
  for (const one of missing) {
    const wanted = `${one.kind} ${one.item}`
    if (!first.has(wanted)) first.set(wanted, one)
  }
  return [...first.values()]
}

/** The rules of the pack by what they are judged for. */
const byKind = (rules: readonly Rule[]) => {
  const known = new Map<string, readonly Rule[]>()
  return (kind: Rule["of"][number]): readonly Rule[] => {
    const found = known.get(kind) ?? rules.filter((rule) => rule.of.includes(kind))
    known.set(kind, found)
    return found
  }
}

export const createChecker = (pack: Pack): Checker => {
  const remembered = new Map<string, Place>()
  const rulesFor = byKind(pack.rules)

  const judge = (rule: Rule, values: NamedValues, item: string | undefined, before: Judged | undefined): Judged => {
    const looked = rule.needs.map((name) => values[name])
    if (before && looked.every((one, at) => isSame(before.looked[at], one))) return before
    return judgeOnce(rule, item, looked)
  }

  const judgeAll = (of: ItemSituation | null, values: NamedValues): Place => {
    const name = of?.item ?? ""
    const before = remembered.get(name)
    if (before && areSame(before.values, values)) return before
    const rules = rulesFor(of ? kindOfItem(of.item) : "job")
    const byRule = new Map(rules.map((rule) => [rule, judge(rule, values, of?.item, before?.byRule.get(rule))]))
    const judged = [...byRule.values()]
    const findings = judged.flatMap((one) => one.finding ?? [])
    const place = { values, byRule, findings, missing: judged.flatMap((one) => one.missing) }
    remembered.set(name, place)
    return place
  }

  return {
    check(situation) {
      const ofJob = jobValues(situation)
      const places = [
        judgeAll(null, ofJob),
        ...situation.items.map((of) => judgeAll(of, { ...ofJob, ...itemValues(of, situation) })),
      ]
      const findings = places.flatMap((one) => one.findings)
      const sorted = severities.flatMap((severity) => findings.filter((finding) => finding.severity === severity))
      return { findings: sorted, missing: withoutRepeats(places.flatMap((one) => one.missing)) }
    },
  }
}
