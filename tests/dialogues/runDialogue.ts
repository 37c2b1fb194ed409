/**
 * Plays a recorded dialogue through the real loop, interpreter and rules. A fixture is a whole situation: what is said
 * or tapped, what comes back in order, and what stands on record at the end.
 */
import { z } from "zod"
import { showFact } from "../../src/cli/showFact"
import type { DialogueEvent } from "../../src/dialogue/DialogueEvent"
import type { DialogueState } from "../../src/dialogue/DialogueState"
import type { Effect } from "../../src/dialogue/Effect"
import { emptyDialogue } from "../../src/dialogue/emptyDialogue"
import { step } from "../../src/dialogue/step"
import type { Tools } from "../../src/dialogue/Tools"
import { RecordedFact } from "../../src/facts/Fact"
import type { Heard } from "../../src/facts/Heard"
import { allHeld } from "../../src/record/holding"
import type { LogLine } from "../../src/record/LogLine"
import { openWarnings } from "../../src/record/warningKey"

/** `after`: seconds since the turn before, ten where it is not said; may be below nought for a clock put back. */
const came = { after: z.number().optional(), said: z.array(z.string()), effects: z.array(z.string()).optional() }

const Turn = z.union([
  z.object({
    heard: z.string(),
    alternatives: z.array(z.string()).optional(),
    margin: z.number().optional(),
    ...came,
  }),
  z.object({ tapped: z.string(), reason: z.string().optional(), every: z.number().optional(), ...came }),
  z.object({ entered: RecordedFact, ...came }),
  z.object({ waited: z.literal(true), ...came }),
  z.object({ ticked: z.literal(true), ...came }),
  z.object({ left: z.literal(true), ...came }),
  /** The page was shut and opened again: only the log is left. */
  z.object({ resumed: z.literal(true), ...came }),
])
export type Turn = z.infer<typeof Turn>

export const Dialogue = z.object({
  about: z.string(),
  start: z.iso.datetime(),
  turns: z.array(Turn),
  /** What holds at the end, one line each, with how it was accepted. */
  record: z.array(z.string()),
  /** Open warnings at the end, as `rule item`. */
  open: z.array(z.string()),
  /** Warnings that were kept, with the reason; left out when there are none. */
  kept: z.array(z.string()).optional(),
  /** Lines about the job as a whole: check-ins, putting away, signing; left out when there are none. */
  log: z.array(z.string()).optional(),
})
export type Dialogue = z.infer<typeof Dialogue>

const actOf = (turn: Extract<Turn, { tapped: string }>) => {
  if (turn.tapped === "keep_it") return { kind: "keep_it", reason: turn.reason ?? "" }
  if (turn.tapped === "check_on_me") return { kind: "check_on_me", everyMinutes: turn.every }
  return { kind: turn.tapped, value: true }
}

const eventOf = (turn: Turn, index: number, lines: readonly LogLine[]): object => {
  if ("waited" in turn) return { type: "waited" }
  if ("ticked" in turn) return { type: "ticked" }
  if ("left" in turn) return { type: "left" }
  if ("resumed" in turn) return { type: "resumed", lines }
  if ("entered" in turn) return { type: "entered", facts: [turn.entered], reason: "typed" }
  if ("tapped" in turn) return { type: "tapped", act: actOf(turn) }
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

const showEffect = (effect: Effect): string[] => {
  if (effect.do === "alarm") return [`alarm ${effect.on ? "on" : "off"}`]
  if (effect.do === "prefer") return [`prefer ${Object.values(effect.preferences).join(" ")}`]
  if (effect.do === "leave") return ["leave"]
  return effect.do === "say" && effect.loud ? ["loud"] : []
}

const showLine = (line: LogLine): string[] => {
  if (line.type === "check_in") return [`check_in ${line.state}${line.every ? ` every ${line.every}` : ""}`]
  if (line.type === "signed_off") return [`signed_off with ${line.undone.length} open points`]
  if (line.type === "reopened") return [`reopened, ${line.because}`]
  return line.type === "put_away" || line.type === "clock_back" ? [line.type] : []
}

/** One turn after the other; `seen` is called with every state and what was just said. */
export const play = (
  dialogue: Dialogue,
  tools: Omit<Tools, "newId">,
  seen: (state: DialogueState, said: readonly string[], at: string) => void = () => {},
): { state: DialogueState; lines: LogLine[]; turns: Turn[] } => {
  let count = 0
  const all: Tools = { ...tools, newId: () => `e${++count}` }
  const lines: LogLine[] = []
  let state = emptyDialogue("test")
  let ms = Date.parse(dialogue.start)
  const take = (event: object): Effect[] => {
    const at = new Date(ms).toISOString()
    const stepped = step(state, { ...event, at } as DialogueEvent, all)
    state = stepped.state
    for (const effect of stepped.effects) if (effect.do === "append") lines.push(...effect.lines)
    return stepped.effects
  }
  take({ type: "opened", job: "job", place: "The bakery", pack: "uk-bs7671" })
  const turns = dialogue.turns.map((turn, index) => {
    ms += (turn.after ?? 10) * 1000
    if ("resumed" in turn) state = emptyDialogue("test")
    const effects = take(eventOf(turn, index, lines))
    const said = effects.flatMap((effect) => (effect.do === "say" ? [effect.words] : []))
    const shown = [...new Set(effects.flatMap(showEffect))]
    seen(state, said, new Date(ms).toISOString())
    const { effects: _, ...rest } = turn
    return { ...rest, said, ...(shown.length > 0 && { effects: shown }) }
  })
  return { state, lines, turns }
}

/** The same dialogue with what really came back in place of what was expected. */
export const replay = (dialogue: Dialogue, tools: Omit<Tools, "newId">): Dialogue => {
  const { state, lines, turns } = play(dialogue, tools)
  const record = allHeld(state.record).map((held) => `${showFact(held.fact)}, ${held.accepted ?? "waiting"}`)
  const open = openWarnings(state.record, state.checked.findings).map((one) => `${one.rule} ${one.item ?? "job"}`)
  const kept = state.record.warnings.flatMap((one) =>
    one.kept === null ? [] : [`${one.warning.split("|").slice(0, 2).join(" ")}: ${one.kept}`],
  )
  const log = lines.flatMap(showLine)
  const { about, start } = dialogue
  return { about, start, turns, record, open, ...(kept.length > 0 && { kept }), ...(log.length > 0 && { log }) }
}
