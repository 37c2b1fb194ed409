/**
 * A change at the desk as lines of the log. A retyped sentence takes the place of the old one: its values replace those
 * in the same fields, and values that came from the old sentence alone and are not said any more are taken back.
 */
import { RecordedFact } from "../facts/Fact"
import type { Heard } from "../facts/Heard"
import type { Context, Interpretation } from "../facts/Interpretation"
import type { Item } from "../facts/Item"
import { done, type Outcome, refuse } from "../facts/Outcome"
import { typedHeard } from "../facts/typedHeard"
import { unitFor } from "../facts/unitOf"
import { allHeld, heldIn } from "../record/holding"
import type { Held, JobRecord } from "../record/JobRecord"
import type { Origin } from "../record/LogLine"
import { itemOf, slotOf } from "../record/slotOf"
import { Additions, type Stamp } from "./Additions"
import type { Change } from "./Change"
import type { Interpret } from "./lightUp"
import { readReason } from "./readReason"

export interface ChangeTools extends Stamp {
  interpret: Interpret
}

const write = (additions: Additions, fact: RecordedFact, origin: Origin): string => {
  const replaced = heldIn(additions.record, slotOf(fact, ""))
  const entry = additions.add({
    type: "entry",
    fact,
    origin,
    needsYes: false,
    ...(replaced && { replaces: replaced.entry }),
  })
  additions.add({ type: "accepted", entry, how: "tapped" })
  return entry
}

const placed = (fact: RecordedFact, item: Item | null): RecordedFact =>
  item !== null && itemOf(fact) === null ? ({ ...fact, subject: item } as RecordedFact) : fact

/** "No, make that ten square" typed as a sentence means the value in it. */
const valuesIn = (fact: Interpretation["facts"][number]): RecordedFact[] => {
  const plain = RecordedFact.safeParse(fact)
  if (plain.success) return [plain.data]
  if (fact.kind !== "correct") return []
  const { field, kind: _, ...rest } = fact
  const unit = unitFor(field)
  const meant = RecordedFact.safeParse({ ...rest, kind: field, ...(unit && { unit }) })
  return meant.success ? [meant.data] : []
}

/** The values of a sentence, in the part it names or else in `item`; or why nothing can be written from it. */
export const readSentence = (heard: Heard, item: Item | null, interpret: Interpret): Outcome<RecordedFact[]> => {
  const context: Context = item ? { item } : {}
  const { facts, ask } = interpret(heard, context)
  if (ask) return refuse(`This could not be read for sure: ${ask.because}.`)
  const named = facts.find((fact) => fact.kind === "service")
  const values = facts.flatMap(valuesIn).map((fact) => placed(fact, named?.kind === "service" ? named.value : item))
  if (values.length === 0) return refuse("There is no value in this sentence.")
  if (values.some((fact) => itemOf(fact) === null)) return refuse("The sentence does not say which part it is about.")
  return done(values)
}

/** Values that hold and that the sentence led to last. */
const ledTo = (record: JobRecord, heard: string): Held[] =>
  allHeld(record).filter(({ origin }) => origin.by === "voice" && origin.heard.at(-1) === heard)

interface Retyped {
  heard: string | null
  text: string
  reason: string
}

const retype = (additions: Additions, { heard, text, reason }: Retyped, tools: ChangeTools): Outcome => {
  const from = heard === null ? [] : ledTo(additions.record, heard)
  const item = from.find((held) => held.fact.kind !== "service")?.item ?? null
  const fresh = typedHeard(tools.newId(), text)
  const facts = readSentence(fresh, item, tools.interpret)
  if (!facts.ok) return facts
  const values = facts.value.filter((fact) => fact.kind !== "service" || !additions.record.items.includes(fact.value))
  const slots = values.map((fact) => slotOf(fact, ""))
  const orphans = from.filter(({ slot, fact }) => !slots.includes(slot) && fact.kind !== "service")
  additions.add({ type: "heard", heard: fresh })
  for (const fact of values) write(additions, fact, { by: "voice", heard: [fresh.id], reason })
  for (const { entry } of orphans) additions.add({ type: "withdrawn", entry, because: "denied", reason })
  return done(undefined)
}

const carryOut = (additions: Additions, change: Change, reason: string, tools: ChangeTools): Outcome => {
  switch (change.do) {
    case "value":
      write(additions, change.fact, { by: "hand", reason })
      return done(undefined)
    case "sentence":
      return retype(additions, { ...change, reason }, tools)
    case "withdraw":
      additions.add({ type: "withdrawn", entry: change.entry, because: "undone", reason })
      return done(undefined)
    case "accept":
      additions.add({ type: "accepted", entry: change.entry, how: "tapped" })
      return done(undefined)
    case "keep":
      additions.add({ type: "kept", warning: change.warning, reason })
      return done(undefined)
    case "reopen":
      if (additions.record.signatures.length > 0) additions.add({ type: "reopened", because: reason })
      return done(undefined)
  }
}

/** The lines that make the change, and the record they give; or why it cannot be made. Nothing is stored. */
export const draftChange = (
  record: JobRecord,
  change: Change,
  reason: string,
  tools: ChangeTools,
): Outcome<Additions> => {
  // A yes says for itself why it is given.
  const why = change.do === "accept" ? done("") : readReason(reason)
  if (!why.ok) return why
  const additions = new Additions(record, tools, why.value)
  const outcome = carryOut(additions, change, why.value, tools)
  return outcome.ok ? done(additions) : outcome
}
