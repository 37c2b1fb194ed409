/**
 * Plays a recorded dialogue through the real loop, interpreter and rules. A fixture is a whole situation: what is said
 * or tapped, what comes back in order, and what stands on record at the end.
 */
import { z } from "zod"
import { showFact } from "../../src/cli/showFact"
import type { DialogueEvent } from "../../src/dialogue/DialogueEvent"
import { emptyDialogue } from "../../src/dialogue/emptyDialogue"
import { step } from "../../src/dialogue/step"
import type { Tools } from "../../src/dialogue/Tools"
import { RecordedFact } from "../../src/facts/Fact"
import type { Heard } from "../../src/facts/Heard"
import { allHeld } from "../../src/record/holding"
import { openWarnings } from "../../src/record/warningKey"

const Turn = z.union([
  z.object({
    heard: z.string(),
    alternatives: z.array(z.string()).optional(),
    margin: z.number().optional(),
    said: z.array(z.string()),
  }),
  z.object({ tapped: z.string(), reason: z.string().optional(), said: z.array(z.string()) }),
  z.object({ entered: RecordedFact, said: z.array(z.string()) }),
  z.object({ waited: z.literal(true), said: z.array(z.string()) }),
])
type Turn = z.infer<typeof Turn>

export const Dialogue = z.object({
  about: z.string(),
  start: z.iso.datetime(),
  turns: z.array(Turn),
  /** What holds at the end, one line each, with how it was accepted. */
  record: z.array(z.string()),
  /** Open warnings at the end, as `rule item`. */
  open: z.array(z.string()),
})
export type Dialogue = z.infer<typeof Dialogue>

const eventOf = (turn: Turn, index: number): Omit<Extract<DialogueEvent, { type: "heard" }>, "at"> | object => {
  if ("waited" in turn) return { type: "waited" }
  if ("entered" in turn) return { type: "entered", facts: [turn.entered], reason: "typed" }
  if ("tapped" in turn) {
    const act =
      turn.tapped === "keep_it" ? { kind: "keep_it", reason: turn.reason ?? "" } : { kind: turn.tapped, value: true }
    return { type: "tapped", act }
  }
  const heard: Heard = {
    id: `h${index}`,
    text: turn.heard,
    alternatives: turn.alternatives ?? [],
    words: [],
    start: index * 10,
    end: index * 10 + 2,
    engine: "scripted",
    margin: turn.margin ?? null,
  }
  return { type: "heard", heard }
}

/** The same dialogue with what really came back in place of what was expected. */
export const replay = (dialogue: Dialogue, tools: Omit<Tools, "newId">): Dialogue => {
  let count = 0
  const all: Tools = { ...tools, newId: () => `e${++count}` }
  let state = step(
    emptyDialogue("test"),
    { type: "opened", at: dialogue.start, job: "job", place: "The bakery", pack: "uk-bs7671" },
    all,
  ).state
  const turns = dialogue.turns.map((turn, index) => {
    const at = new Date(Date.parse(dialogue.start) + (index + 1) * 10_000).toISOString()
    const stepped = step(state, { ...eventOf(turn, index), at } as DialogueEvent, all)
    state = stepped.state
    return { ...turn, said: stepped.effects.flatMap((effect) => (effect.do === "say" ? [effect.words] : [])) }
  })
  const record = allHeld(state.record).map((held) => `${showFact(held.fact)}, ${held.accepted ?? "waiting"}`)
  const open = openWarnings(state.record, state.checked.findings).map((one) => `${one.rule} ${one.item ?? "job"}`)
  return { ...dialogue, turns, record, open }
}
