/** A small share of all changes on every run: none of them may go unnoticed. The rest is tried by `mutation/main.ts`. */
import { expect, test } from "vitest"
import { equivalents } from "./mutation/equivalents"
import { nameOf } from "./mutation/Mutant"
import { makeMutants } from "./mutation/makeMutants"
import { createTrier } from "./mutation/tryMutants"

const share = 4
const quickFiles = ["edges", "collectedValues", "examples", "shown", "circuits"]

test("changed figures and comparisons are noticed", { timeout: 60_000 }, async () => {
  const all = makeMutants("src/rules/tables").filter((mutant) => !equivalents.some((one) => one.matches(mutant)))
  const tried = Array.from({ length: share }, (_, at) => all[Math.floor(((at + 0.5) * all.length) / share)]!)
  const trier = await createTrier(quickFiles)
  expect(await trier.isNoticed(null)).toBe(false)
  const unnoticed: string[] = []
  for (const mutant of tried) if (!(await trier.isNoticed(mutant))) unnoticed.push(nameOf(mutant))
  await trier.close()
  expect(all.length).toBeGreaterThan(900)
  expect(unnoticed).toEqual([])
})
