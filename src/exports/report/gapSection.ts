/** What was not said or not done as far as the rules would need it, and what still waits for a yes. */
import type { Missing } from "../../facts/Finding"
import { awaitingYes, heldFact, isOnRecord } from "../../record/holding"
import { findPack } from "../../rules/packs"
import type { ExportedJob } from "../ExportedJob"
import { kindWords, whatOf } from "../factWords"
import { itemName, quantity, sentence, stepWords } from "./quantity"
import type { Block, Cell } from "./Report"

const missingWords = (kind: string): string =>
  kind.startsWith("step:") ? `${stepWords(kind.slice(5))}: not said` : `${kindWords(kind)}: not said`

const rowOf = ({ item, kind, rule }: Missing, titles: ReadonlyMap<string, string>): Cell[] => [
  { text: itemName(item ?? "job") },
  { text: sentence(missingWords(kind)), mark: "bare" },
  { text: titles.get(rule) ?? rule },
]

/** What the pack wants to know of every job and is not on the record; what a rule asks for by itself is not repeated. */
const unasked = ({ record, missing }: ExportedJob): Cell[][] => {
  const arrangement = heldFact(record, "supply", "earthing_arrangement")?.fact.value
  return (findPack(record.pack)?.questions ?? [])
    .filter(({ item, kind }) => !isOnRecord(record, item, kind))
    .filter(({ when }) => when === undefined || arrangement === undefined || when.includes(arrangement))
    .filter(({ item, kind }) => !missing.some((one) => one.item === item && one.kind === kind))
    .map(({ item, kind, because }) => [
      { text: itemName(item) },
      { text: sentence(missingWords(kind)), mark: "bare" },
      { text: because },
    ])
}

/** The section; it always stands there. */
export const gapSection = (job: ExportedJob): Block[] => {
  const titles = new Map((findPack(job.record.pack)?.rules ?? []).map((rule) => [rule.name, rule.title]))
  const waiting = awaitingYes(job.record).map(({ item, fact }): Cell[] => [
    { text: itemName(item) },
    { text: `${sentence(whatOf(fact))} ${quantity(fact)}: waits for a yes`, mark: "waiting" },
    { text: "The worker has not answered." },
  ])
  const rows = [...waiting, ...unasked(job), ...job.missing.map((one) => rowOf(one, titles))]
  const body: Block =
    rows.length > 0
      ? { kind: "table", heads: ["Part", "What is open", "What looks at it"], shares: [0.22, 0.38, 0.4], rows }
      : { kind: "text", text: "Nothing that the rules look at was left unsaid. They do not look at everything." }
  return [{ kind: "heading", level: 2, text: "Not said, not done" }, body]
}
