/**
 * How far a part's name may be from what was heard before it is asked about: every name with one slip at every place
 * (a letter lost, doubled, changed or swapped with the next), the longer names with two, and the sound-alikes that
 * engines are known to write; against English words that mean no part, from the recogniser's own dictionary.
 */
import { readFileSync } from "node:fs"
import { seededRandom } from "../../src/cli/grammarTools"
import { readGrammars } from "../../src/cli/readGrammars"
import { knownServices } from "../../src/facts/Item"
import { nearness, openNearParts } from "../../src/interpret/nearParts"
import { readHomophones } from "../../src/interpret/readHomophones"

const names = knownServices.map((item) => ({ item, name: item.replaceAll("_", " ") }))
const soundAlikes = readHomophones(readGrammars()["homophones.tsv"] ?? "")
  .filter((one) => one.place === "part")
  .map(({ heard, meant }) => ({ heard, item: meant.replaceAll(" ", "_") }))

/** Prints the curve. */
export async function run(): Promise<void> {
  const once = names.flatMap(({ item, name }) => slipsOf(name).map((heard) => ({ item, heard })))
  const twice = names
    .filter(({ name }) => name.length > 6)
    .flatMap(({ item, name }) => sampled(slipsOf(name).flatMap(slipsOf), 150).map((heard) => ({ item, heard })))
  const others = distractors()
  console.log(
    `${once.length} single slips, ${twice.length} double slips, ${soundAlikes.length} sound-alikes, ${others.length} other words`,
  )
  console.log("threshold   one slip   two slips   sound-alike   other words asked about")
  for (const threshold of [0.1, 0.15, 0.2, 0.25, 0.3, 0.34, 0.4, 0.45, 0.5, 0.6, 0.7]) {
    const near = openNearParts(threshold)
    const right = (cases: ReadonlyArray<{ item: string; heard: string }>) =>
      share(cases.filter(({ item, heard }) => near(heard)[0] === item).length, cases.length)
    const asked = share(others.filter((word) => near(word).length > 0).length, others.length)
    const mark = threshold === nearness ? "  <- used" : ""
    console.log(`${String(threshold).padEnd(9)} ${right(once)} ${right(twice)} ${right(soundAlikes)} ${asked}${mark}`)
  }
}

const share = (count: number, all: number) => `${((100 * count) / all).toFixed(1)} %`.padStart(11)

/** All ways to get one letter of a name wrong. */
function slipsOf(name: string): string[] {
  const slips = new Set<string>()
  for (let at = 0; at < name.length; at += 1) {
    const [head, letter, tail] = [name.slice(0, at), name[at]!, name.slice(at + 1)]
    slips.add(head + tail)
    slips.add(head + letter + letter + tail)
    for (const other of "aeioutnsr") slips.add(head + other + tail)
    if (tail !== "") slips.add(head + tail[0]! + letter + tail.slice(1))
  }
  slips.delete(name)
  return [...slips]
}

function sampled(all: readonly string[], count: number): string[] {
  const random = seededRandom(3)
  return Array.from({ length: count }, () => all[Math.floor(random() * all.length)]!)
}

/** Words of the dictionary that are no slip of a name, every twentieth. */
function distractors(): string[] {
  const slips = new Set(names.flatMap(({ name }) => [name, ...slipsOf(name)]))
  const words = readFileSync("node_modules/soundswallower/model/en-us/dict.txt", "utf8")
    .split("\n")
    .map((line) => line.split(/[\s(]/)[0]!)
    .filter((word) => /^[a-z]{3,}$/.test(word) && !slips.has(word))
  return [...new Set(words)].filter((_, at) => at % 20 === 0)
}
