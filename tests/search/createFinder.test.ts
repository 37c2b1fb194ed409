/** Rows in memory: found by how words begin, put in again, and ordered. */
import fc from "fast-check"
import { expect, test } from "vitest"
import type { JobRow } from "../../src/record/JobRow"
import type { Condition } from "../../src/search/Condition"
import { createFinder, type Order } from "../../src/search/createFinder"
import { splitWords } from "../../src/search/splitWords"
import { rowWith } from "./someRows"

const finderOf = (...rows: JobRow[]) => {
  const finder = createFinder()
  finder.put(rows)
  return finder
}
const words = (text: string, where: "place" | "said" | "either" = "either"): Condition => ({
  kind: "words",
  words: splitWords(text),
  in: where,
})
const found = (rows: readonly JobRow[]) => rows.map((row) => row.job)

const bakery = rowWith({ job: "a", words: "gas ten square no room behind the oven" })
const hall = rowWith({ job: "b", place: "Village hall, kitchen end", openedAt: "2026-03-05T08:00:00+01:00", warns: 1 })

test("every word has to begin a word of the place or of what was said", () => {
  const finder = finderOf(bakery, hall)
  expect(found(finder.find([words("vil kit")], "newest"))).toEqual(["b"])
  expect(found(finder.find([words("room bak")], "newest"))).toEqual(["a"])
  expect(found(finder.find([words("room", "place")], "newest"))).toEqual([])
  expect(found(finder.find([words("bakery", "said")], "newest"))).toEqual([])
  expect(found(finder.find([words("oom")], "newest"))).toEqual([])
})

test("a job that is put in again is found as it is now, and once", () => {
  const finder = finderOf(bakery, hall)
  finder.put([rowWith({ job: "a", place: "The old bakery", words: "water" })])
  expect(finder.size).toBe(2)
  expect(found(finder.find([words("oven")], "newest"))).toEqual([])
  expect(found(finder.find([words("water old")], "newest"))).toEqual(["a"])
})

test("orders: by the moment, whatever the offset; by place as people count; by what most needs looking at", () => {
  const rows = [
    rowWith({ job: "late", openedAt: "2026-03-02T23:30:00-02:00", place: "Hall 10" }),
    rowWith({ job: "early", openedAt: "2026-03-03T01:00:00+01:00", place: "Hall 9", warns: 3 }),
    rowWith({ job: "stop", openedAt: "2026-01-01T09:00:00+00:00", place: "arcade", stops: 1 }),
  ]
  const finder = finderOf(...rows)
  const orders: Record<Order, string[]> = {
    newest: ["late", "early", "stop"],
    oldest: ["stop", "early", "late"],
    place: ["stop", "early", "late"],
    gravest: ["stop", "early", "late"],
  }
  for (const [order, jobs] of Object.entries(orders)) expect(found(finder.find([], order as Order))).toEqual(jobs)
})

test("the index finds what a plain look through all words finds", () => {
  const word = fc.constantFrom("gas", "gate", "water", "wat", "ten", "tent", "é", "10", "0.05")
  const line = fc.array(word, { maxLength: 5 }).map((all) => all.join(" "))
  fc.assert(
    fc.property(fc.array(line, { maxLength: 12 }), fc.array(word, { minLength: 1, maxLength: 3 }), (texts, asked) => {
      const rows = texts.map((text, at) =>
        rowWith({ job: `job-${at}`, place: "x", words: [...new Set(splitWords(text))].join(" ") }),
      )
      const wanted = asked.flatMap(splitWords)
      const plain = rows.filter((row) =>
        wanted.every((one) => row.words.split(" ").some((word) => word.startsWith(one))),
      )
      const byIndex = finderOf(...rows).find([words(asked.join(" "), "said")], "newest")
      expect(found(byIndex).sort()).toEqual(found(plain).sort())
    }),
  )
})
