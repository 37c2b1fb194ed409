/** A pack as Markdown, made from the rules and tables themselves, so that the printed figures are the ones in use. */
import type { Source } from "../facts/Finding"
import type { Pack } from "./Pack"
import type { Rule } from "./Rule"
import type { Row, Table } from "./Table"

const cell = (text: string) => text.replaceAll("|", "\\|").replaceAll("\n", " ")
const line = (...cells: string[]) => `| ${cells.map(cell).join(" | ")} |`
const where = ({ standard, edition, clause }: Source) =>
  [standard, ...[edition, clause].filter((part) => part !== "none")].join(", ")

const showLimits = (limits: Rule["limits"]) =>
  Object.entries(limits)
    .map(([name, value]) => `${name} ${value}`)
    .join(", ")

const ruleLine = (rule: Rule) =>
  line(rule.name, rule.title, rule.of.join(", "), showLimits(rule.limits), where(rule.source), rule.status)

const ruleLines = (rules: readonly Rule[]) => [
  line("rule", "wants", "of", "limits", "source", "status"),
  line("---", "---", "---", "---", "---", "---"),
  ...rules.map(ruleLine),
]

const tableLines = (table: Table<Row>): string[] => {
  const names = [...new Set(table.rows.flatMap((row) => Object.keys(row)))]
  return [
    `### ${table.title}`,
    "",
    `${where(table.source)}. Unit: ${table.unit}. Status: ${table.status}.${table.note ? ` ${table.note}` : ""}`,
    "",
    line(...names),
    line(...names.map(() => "---")),
    ...table.rows.map((row) =>
      line(...names.map((name) => (row[name] === undefined ? "" : String(row[name] ?? "any")))),
    ),
    "",
  ]
}

/** Markdown: what the pack follows, its rules, and every table of figures with its source. */
export const rulesTable = (pack: Pack): string =>
  [
    `## ${pack.title}`,
    "",
    `Follows ${pack.edition}. ${pack.newer}`,
    ...(pack.thin ? ["", "This pack is thin: for orientation only."] : []),
    "",
    ...ruleLines(pack.rules),
    "",
    ...pack.tables.flatMap(tableLines),
  ].join("\n")
