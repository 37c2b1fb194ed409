/** Changes that cannot be told from the original by anything that a person could say, with the reason. */
import type { Mutant } from "./Mutant"

export interface Equivalent {
  because: string
  matches(mutant: Mutant): boolean
}

/** By the end of the file's path and what is written there. */
const at = (file: string, was: RegExp, becomes: RegExp, because: string): Equivalent => ({
  because,
  matches: (mutant) => mutant.file.endsWith(file) && was.test(mutant.was) && becomes.test(mutant.becomes),
})

export const equivalents: readonly Equivalent[] = [
  at(
    "answerSize.ts",
    /^1e-6$/,
    /./,
    "room for the binary tail of a decimal: ten times more or less of it changes no digit",
  ),
  at("ringChecks.ts", /^1e-5$/, /./, "room for the binary tail of a difference of two decimals"),
  at("ringChecks.ts", /^<=$/, /^<$/, "no reading lies on a limit that is not a decimal itself"),
  at("ringChecks.ts", /^>=$/, /^>$/, "no reading lies on a limit that is not a decimal itself"),
  at(
    "figures.ts",
    /^(>=|1000)$/,
    /^(>|1001|999)$/,
    "between 1000 and 10000 both ways of printing give the same digits",
  ),
]
