/** What must hold of every pack: nothing named twice, every figure shown somewhere, every source and status given. */
import { expect, test } from "vitest"
import { Source, Status } from "../../src/facts/Finding"
import { valueNames } from "../../src/rules/namedValues"
import { packs } from "../../src/rules/packs"
import { rulesTable } from "../../src/rules/rulesTable"
import type { Row, Table } from "../../src/rules/Table"

const tables = Object.values(
  import.meta.glob<Record<string, Table<Row>>>("../../src/rules/tables/*.ts", { eager: true }),
).flatMap((module) => Object.values(module))

test("every table belongs to a pack, so that its figures can be looked at", () => {
  const shown = new Set<unknown>(packs.flatMap((pack) => pack.tables))
  expect(tables.length).toBeGreaterThan(35)
  expect(tables.filter((table) => !shown.has(table)).map((table) => table.title)).toEqual([])
})

test.each(tables.map((table) => [table.title, table] as const))(
  "%s has a source, a status and rows of one kind",
  (_, table) => {
    expect(Source.safeParse(table.source).success).toBe(true)
    expect(Status.safeParse(table.status).success).toBe(true)
    expect(table.rows.length).toBeGreaterThan(0)
    const names = (row: Row) => Object.keys(row).filter((name) => name !== "status" && name !== "kOver300Mm2")
    for (const row of table.rows) expect(names(row)).toEqual(names(table.rows[0]!))
  },
)

test.each(packs.map((pack) => [pack.id, pack] as const))(
  "%s names nothing twice and needs only values that exist",
  (_, pack) => {
    const names = pack.rules.map((rule) => rule.name)
    expect(new Set(names).size).toBe(names.length)
    expect(new Set(pack.tables.map((table) => table.title)).size).toBe(pack.tables.length)
    const unknown = pack.rules.flatMap((rule) => rule.needs.filter((name) => !(name in valueNames)))
    expect(unknown).toEqual([])
    expect(pack.newer).toMatch(/[Ll]ook in/)
    for (const question of pack.questions) expect(question.words).toMatch(/\?$/)
  },
)

test("a pack's page shows every rule's source and every row's figures", () => {
  const page = rulesTable(packs[0]!)
  expect(page).toContain("| rule | wants | of | limits | source | status |")
  expect(page).toContain("mostMm 600")
  expect(page).toContain("| copper | 2 | 10 | 1.83 |")
  expect(page).toContain("| 35 | 10 |")
  expect(page).toContain("| BS 1362 | 5 | 13 | 3.64 | memory |")
})
