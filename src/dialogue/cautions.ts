/** The usual cautions before an act that can hurt, each said once a job and short. Common practice; local rules come first. */
import type { RecordedFact } from "../facts/Fact"
import type { JobRecord } from "../record/JobRecord"

interface Caution {
  before: string
  isDue: (fact: RecordedFact) => boolean
  words: string
}

/** Said at the start of every job. */
export const openingCaution = "Advice only. Check the edition in force, and local rules. You decide and sign."

/** Said when a job is taken up again on which something was proved dead: nobody knows what was switched since. */
export const afterBreak = "Caution. What was dead before the break may be live now. Prove it again."

const cautions: readonly Caution[] = [
  {
    before: "working on a gas pipe",
    isDue: (fact) => fact.kind === "service" && fact.value === "gas",
    words: "Caution. If you smell gas, stop and get out. No switches, no sparks.",
  },
  {
    before: "opening an earth",
    isDue: (fact) => fact.kind === "step_done" && fact.value === "leads_nulled",
    words: "Caution. Isolate and prove dead before any earth comes off.",
  },
  {
    before: "putting the supply back on",
    isDue: (fact) => fact.kind === "step_done" && fact.value === "connections_checked",
    words: "Caution. Every end back and every cover on before the power is.",
  },
]

/** Cautions that these facts make due and that were not yet due before in this job. */
export const cautionsFor = (record: JobRecord, facts: readonly RecordedFact[]): string[] =>
  cautions
    .filter((caution) => facts.some(caution.isDue))
    .filter((caution) => record.entries.filter((held) => caution.isDue(held.fact)).length === 1)
    .map((caution) => caution.words)
