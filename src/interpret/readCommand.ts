/** Wishes that write nothing: "what's left", "what size should the water be", "stop listening". */
import { type Command, type Context, EveryMinutes, type Interpretation } from "../facts/Interpretation"
import { isEdgeGap } from "./Token"
import { type Island, taggedNumbers, tagValue, type Utterance } from "./Utterance"

const withSubject = new Set([
  "whats_left",
  "what_size",
  "what_should_it_read",
  "how_long",
  "what_did_i_say",
  "start_over",
])

/** The command, or null when the utterance is more or other than one. */
export function readCommand(utterance: Utterance, context: Context): Interpretation | null {
  const island = utterance.islands.find((one) => one.rule.startsWith("commands."))
  const name = island && tagValue(island, "command")
  if (!island || !name) return null
  if (name === "new_part") return readNewPart(utterance, island.to)
  if (name === "new_bond") return readNewBond(utterance, island.to)
  if (name === "keep_it") return readKeep(utterance, island.to)
  if (name === "reason" || name === "because") return readReason(utterance, island, name)
  if (name === "smells_gas") return isDenied(utterance) ? null : only({ kind: "smells_gas" })
  return isAlone(utterance, island) ? readPlain(utterance, island, name, context) : null
}

const isAlone = (utterance: Utterance, island: Island): boolean =>
  utterance.isClear &&
  utterance.islands.every((one) => one === island || /^(parts|answers\.(confirm|maybe|repeat)|repairs)/.test(one.rule))

/** A wish that is all that was said. */
function readPlain(utterance: Utterance, island: Island, name: string, context: Context): Interpretation {
  if (name === "check_on_me") return readCheckOnMe(utterance, island)
  if (name === "show") return only({ kind: name, screen: tagValue(island, "screen") } as Command)
  if (name === "save") return only({ kind: name, what: tagValue(island, "what") } as Command)
  if (name === "verbosity") return only({ kind: name, value: tagValue(island, "value") } as Command)
  const part = utterance.islands.find((one) => one.rule.startsWith("parts."))
  if (name === "what_did_i_say" && context.asked === "confirm" && utterance.words.join(" ") === "read that back")
    return { facts: [{ kind: "repeat", value: true }], ask: null, command: null }
  const named = tagValue(island, "item") ?? (part && tagValue(part, "item"))
  // What is left is asked of the whole job unless a part is named; every other wish is about the current part.
  const item = named ?? (name === "whats_left" ? undefined : context.item)
  const subject = withSubject.has(name) && item ? { subject: item } : {}
  return only({ kind: name, ...subject } as Command)
}

/** "no smell of gas", "can you smell gas": nobody smells it. Any other word beside it may be in fright and hides nothing. */
const isDenied = (utterance: Utterance): boolean =>
  utterance.words.some((word) => /^(no|not|any|never|without|if|can't|cannot|don't|didn't|wasn't|isn't)$/.test(word))

const only = (command: Command): Interpretation => ({ facts: [], ask: null, command })

/** The interval must be a plain number of minutes that the loop can keep; without one, the loop says how to give it. */
function readCheckOnMe(utterance: Utterance, island: Island): Interpretation {
  const spoken = taggedNumbers(utterance, island, "n")[0]
  const minutes = EveryMinutes.safeParse(Number(tagValue(island, "n") || spoken?.value))
  return only({ kind: "check_on_me", ...(minutes.success && !spoken?.doubt && { everyMinutes: minutes.data }) })
}

/** An answer to why a warning is kept: a usual reason alone, or anything that begins with "because". */
function readReason(utterance: Utterance, island: Island, name: string): Interpretation | null {
  if (island.from > 1) return null
  const first = name === "because" || utterance.words[island.from] === "because" ? island.from + 1 : island.from
  return name === "because" || island.to === utterance.tokens.length ? readKeep(utterance, first) : null
}

function readKeep(utterance: Utterance, from: number): Interpretation {
  const first = utterance.tokens[from]
  const reason = first
    ? utterance.text
        .slice(first.from)
        .trim()
        .replace(/[.\s]+$/, "")
    : ""
  if (reason === "")
    return { facts: [], ask: { kind: "keep_reason", because: "a reason is needed to keep it" }, command: null }
  return { facts: [], ask: null, command: { kind: "keep_it", reason: reason.slice(0, 500) } }
}

/** "new bond, call it …": the name stands behind a pause and a "call it". */
function readNewBond(utterance: Utterance, from: number): Interpretation | null {
  const naming = /^(call it|called|name it|named|it's called|it's|call this) /.exec(
    `${utterance.words.slice(from).join(" ")} `,
  )
  return naming ? readNewPart(utterance, from + naming[1]!.split(" ").length) : null
}

/** "new bond, call it boiler pipe": up to three plain words become the part's name. */
function readNewPart(utterance: Utterance, from: number): Interpretation {
  const words: string[] = []
  for (let at = from; at < utterance.tokens.length && words.length < 4; at += 1) {
    if (at > from && isEdgeGap(utterance.tokens[at - 1]!.after)) break
    if (/^[a-z]+$/.test(utterance.words[at]!) && !["the", "a"].includes(utterance.words[at]!))
      words.push(utterance.words[at]!)
  }
  if (words.length === 0 || words.length > 3)
    return { facts: [], ask: { kind: "service", because: "the name of the new bond was not clear" }, command: null }
  return { facts: [{ kind: "service", value: words.join("_") }], ask: null, command: null }
}
