/** A small share of the spoiled files of `npm run bench -- fuzz`, always the same ones, and each kind of damage at least once. */
import { expect, test } from "vitest"
import { damages, fuzzFile } from "./fuzzFiles"
import { readSources } from "./fuzzSources"
import { tryFile } from "./tryFile"

test("two hundred spoiled files are read, saved in part or refused in plain words, and none runs", async () => {
  const sources = readSources()
  const seen = new Set<string>()
  const wrong: string[] = []
  for (let seed = 1; seed <= 200; seed++) {
    const file = fuzzFile(seed, sources)
    seen.add(file.damage)
    const tried = await tryFile(file, sources.job, seed % 40 === 0)
    for (const one of tried.wrong) wrong.push(`file ${seed} (${file.kind} ${file.damage}): ${one}`)
  }
  expect(wrong).toEqual([])
  expect([...seen].sort()).toEqual(["whole", ...Object.keys(damages)].sort())
}, 120_000)
