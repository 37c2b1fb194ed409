/**
 * Whatever is said, tapped or let pass, in any order: the loop never throws, every line fits its place in the log, no
 * entry is lost or written twice, and the record is what the log says.
 */
import fc from "fast-check"
import { expect, test } from "vitest"
import type { DialogueEvent } from "../../src/dialogue/DialogueEvent"
import { emptyDialogue } from "../../src/dialogue/emptyDialogue"
import { step } from "../../src/dialogue/step"
import type { Tools } from "../../src/dialogue/Tools"
import type { Answer } from "../../src/facts/Fact"
import type { Heard } from "../../src/facts/Heard"
import type { Command } from "../../src/facts/Interpretation"
import { allHeld } from "../../src/record/holding"
import { LogLine } from "../../src/record/LogLine"
import { project } from "../../src/record/project"
import { realTools } from "../realTools"

const sentences = [
  "water ten square",
  "water six square",
  "gas sixteen square six metres",
  "nought point nought three ohms",
  "leads open over range",
  "greater than two hundred megohms",
  "pme",
  "t t",
  "supply neutral twenty five square",
  "isolated and proved dead",
  "tester proved",
  "before",
  "working live alone",
  "one end disconnected",
  "connected to the met",
  "clamp nine hundred millimetres from the meter",
  "oil needs no bond",
  "no steel here",
  "new bond called pump house",
  "pump house four square",
  "note the cover is cracked",
  "fifteen or fifty metres",
  "yes",
  "no",
  "no make that ten",
  "undo",
  "undo the last three",
  "skip",
  "say again",
  "what's left",
  "what next",
  "what size",
  "what should it read",
  "how long can it be",
  "what did I say for the gas",
  "read it all back",
  "go on",
  "stop reading",
  "start the water over",
  "keep it because existing",
  "only warnings",
  "short answers",
  "full answers",
  "louder",
  "slower",
  "check on me every ten minutes",
  "stop checking on me",
  "I'm all right",
  "sign it off",
  "pause",
  "listen",
  "put the kettle on",
] as const

type Happening = { type: string; text?: string; act?: Answer | Command; after: number }

const taps: readonly (Answer | Command)[] = [
  { kind: "confirm", value: true },
  { kind: "deny", value: true },
  { kind: "undo", value: true, count: 2 },
  { kind: "sign_off" },
  { kind: "all_right" },
  { kind: "keep_it", reason: "existing" },
  { kind: "start_over" },
]
/** Time mostly goes on by seconds, now and then by half an hour, and once in a while back. */
const after = fc.oneof(
  { weight: 8, arbitrary: fc.integer({ min: 1, max: 40 }) },
  { weight: 1, arbitrary: fc.constant(1800) },
  { weight: 1, arbitrary: fc.constant(-3600) },
)
const happening: fc.Arbitrary<Happening> = fc.oneof(
  {
    weight: 12,
    arbitrary: fc.record({ type: fc.constant("heard"), text: fc.constantFrom(...sentences), after }),
  },
  { weight: 2, arbitrary: fc.record({ type: fc.constant("tapped"), act: fc.constantFrom(...taps), after }) },
  { weight: 3, arbitrary: fc.record({ type: fc.constantFrom("waited", "ticked", "resumed"), after }) },
)

/** Reading takes most of the time, and the same sentences come again and again under the same context. */
const rememberingTools = (): Omit<Tools, "newId"> => {
  const { interpret, check } = realTools()
  const known = new Map<string, ReturnType<Tools["interpret"]>>()
  return {
    check,
    interpret(heard, context) {
      const { now: _, ...rest } = context
      const key = JSON.stringify([heard.text, rest])
      const reading = known.get(key) ?? interpret(heard, context)
      known.set(key, reading)
      return reading
    },
  }
}
const tools = rememberingTools()

const eventOf = (one: Happening, id: string, lines: readonly LogLine[], at: string): DialogueEvent => {
  if (one.type === "resumed") return { type: "resumed", at, lines }
  if (one.type === "tapped") return { type: "tapped", at, act: one.act! }
  if (one.type === "waited") return { type: "waited", at }
  if (one.type === "ticked") return { type: "ticked", at }
  const heard: Heard = {
    id,
    text: one.text!,
    alternatives: [],
    words: [],
    start: 0,
    end: 1,
    engine: "scripted",
    margin: null,
  }
  return { type: "heard", at, heard }
}

const play = (happenings: readonly Happening[]) => {
  let count = 0
  const all: Tools = { ...tools, newId: () => `e${++count}` }
  const lines: LogLine[] = []
  let ms = Date.parse("2026-03-02T09:00:00Z")
  let state = emptyDialogue("test")
  const take = (event: DialogueEvent) => {
    const stepped = step(state, event, all)
    state = stepped.state
    for (const effect of stepped.effects) if (effect.do === "append") lines.push(...effect.lines)
  }
  take({ type: "opened", at: new Date(ms).toISOString(), job: "job", place: "The bakery", pack: "uk-bs7671" })
  for (const one of happenings) {
    ms += one.after * 1000
    const accepted = state.record.entries.filter((held) => held.accepted !== null && held.withdrawn === null)
    take(eventOf(one, `h${++count}`, lines, new Date(ms).toISOString()))
    const now = new Map(state.record.entries.map((held) => [held.entry, held]))
    // What was accepted is still there, unless it was taken back by a line that says so.
    for (const { entry } of accepted) {
      const isBack = lines.some((line) => line.type === "withdrawn" && line.entry === entry)
      expect(now.get(entry)?.accepted != null && (now.get(entry)?.withdrawn !== null) === isBack).toBe(true)
    }
  }
  return { state, lines }
}

test("no order of events throws, loses what was accepted or writes it twice", { timeout: 60_000 }, () => {
  fc.assert(
    fc.property(fc.array(happening, { maxLength: 40 }), (happenings) => {
      const { state, lines } = play(happenings)
      for (const line of lines) expect(LogLine.safeParse(line).success).toBe(true)
      expect(lines.map((line) => line.seq)).toEqual(lines.map((_, at) => at))
      expect(new Set(lines.map((line) => line.id)).size).toBe(lines.length)
      expect(project(lines)).toEqual(state.record)
      const slots = allHeld(state.record).map((held) => held.slot)
      expect(new Set(slots).size).toBe(slots.length)
      // A signed job was not changed after its signature.
      const signed = lines.findLastIndex((line) => line.type === "signed_off")
      const changed = lines.findLastIndex((line) => ["entry", "withdrawn", "kept"].includes(line.type))
      expect(state.record.signedOff !== null).toBe(signed > changed)
    }),
    { numRuns: Number(process.env.BOTHHANDS_RUNS ?? 60) },
  )
})
