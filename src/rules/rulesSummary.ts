/** The rules of a pack as a table for people: where each comes from, how grave it is, and what it says aloud. */
import type { Source } from "../facts/Finding"
import type { Pack } from "./Pack"
import type { Rule } from "./Rule"

const showSource = ({ standard, edition, clause }: Source) =>
  [standard, edition, clause].filter((part) => part !== "" && part !== "none").join(", ")

/** Each thing that the rule's own examples make it say when something is amiss, once, with how grave it is. */
const complaintsOf = (rule: Rule): { severity: string; spoken: string }[] => {
  const verdicts = rule.examples.map(({ given }) => rule.judge(given))
  const fails = verdicts.flatMap((one) => (one.verdict === "fails" ? [one] : []))
  return fails.filter(
    (one, at) => fails.findIndex((other) => other.which === one.which && other.severity === one.severity) === at,
  )
}

/** Markdown with one row for each thing that a rule may say. */
export const rulesSummary = (pack: Pack): string => {
  const rows = pack.rules.flatMap((rule) =>
    complaintsOf(rule).map(
      ({ severity, spoken }) =>
        `| ${rule.name} | ${showSource(rule.source)} | ${severity} | ${rule.status} | ${spoken} |`,
    ),
  )
  return ["| rule | clause | severity | status | what it says, for example |", "|---|---|---|---|---|", ...rows].join(
    "\n",
  )
}
