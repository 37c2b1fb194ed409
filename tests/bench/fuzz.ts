/**
 * Spoiled files by the thousand through reading, checking and exporting, with the work of each in processor time. `FILES` says how many (10,000), `FROM` the first
 * number, `EVERY` how often a file also goes through the PDF report and the whole loop (each 25th).
 */
import { fuzzFile } from "../exports/fuzzFiles"
import { readSources } from "../exports/fuzzSources"
import { tryFile } from "../exports/tryFile"

const setting = (name: string, usual: number) => Number(process.env[name] ?? usual)

export const run = async (): Promise<void> => {
  const [files, from, every] = [setting("FILES", 10_000), setting("FROM", 1), setting("EVERY", 25)]
  const sources = readSources()
  const came = new Map<string, number>()
  const times: { seed: number; ms: number; what: string }[] = []
  let bad = 0
  for (let seed = from; seed < from + files; seed++) {
    const file = fuzzFile(seed, sources)
    const what = `${file.kind} ${file.damage}`
    const start = process.cpuUsage()
    const tried = await tryFile(file, sources.job, seed % every === 0)
    times.push({ seed, ms: process.cpuUsage(start).user / 1000, what })
    came.set(tried.came, (came.get(tried.came) ?? 0) + 1)
    if (tried.wrong.length === 0) continue
    bad++
    console.log(`file ${seed} (${what}): ${tried.wrong.slice(0, 3).join(" | ")}`)
  }
  const sorted = times.toSorted((a, b) => b.ms - a.ms)
  for (const [state, count] of came) console.log(`${String(count).padStart(6)}  ${state}`)
  console.log(`${String(bad).padStart(6)}  with something wrong, of ${files}`)
  console.log(
    `most work: ${sorted
      .slice(0, 3)
      .map(({ seed, ms, what }) => `${Math.round(ms)} ms (${seed}, ${what})`)
      .join(", ")}`,
  )
  console.log(`half of them took at most ${Math.round(sorted[Math.floor(sorted.length / 2)]?.ms ?? 0)} ms`)
}
