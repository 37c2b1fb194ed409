/**
 * How good the tests of the rules are: `npx tsx tests/rules/mutation/main.ts [pattern of paths]` changes the rules in every
 * small way, one at a time, and lists the changes that no test noticed and that are not known to change nothing.
 */
import { equivalents } from "./equivalents"
import { nameOf } from "./Mutant"
import { makeMutants } from "./makeMutants"
import { createTrier } from "./tryMutants"

const wanted = new RegExp(process.argv[2] ?? "")
const trier = await createTrier()
if (await trier.isNoticed(null)) throw new Error("The tests fail before anything was changed.")
const all = makeMutants("src/rules").filter((mutant) => wanted.test(mutant.file))
const known = all.filter((mutant) => equivalents.some((one) => one.matches(mutant)))
const tried = all.filter((mutant) => !known.includes(mutant))
const survivors: string[] = []
for (const mutant of tried) if (!(await trier.isNoticed(mutant))) survivors.push(nameOf(mutant))
await trier.close()
for (const name of survivors) process.stdout.write(`survived ${name}\n`)
process.stdout.write(
  `${tried.length} changes tried, ${tried.length - survivors.length} noticed, ${survivors.length} not; ` +
    `${known.length} are known to change nothing that counts\n`,
)
process.exitCode = survivors.length > 0 ? 1 : 0
