/**
 * Cuts JSGF text into tokens. Doc comments are kept, since `@example` lines in them are tests; every other comment is
 * dropped. Words are lowered, because no ear writes capitals with a meaning.
 */
import { GrammarError } from "./GrammarError"

export interface JsgfToken {
  kind: "word" | "rule" | "tag" | "doc" | "mark" | "weight"
  text: string
  line: number
}

const shapes: ReadonlyArray<readonly [JsgfToken["kind"] | "nothing", RegExp]> = [
  ["nothing", /\s+/y],
  ["doc", /\/\*\*([\s\S]*?)\*\//y],
  ["nothing", /\/\*[\s\S]*?\*\//y],
  ["nothing", /\/\/[^\n]*/y],
  ["weight", /\/\s*([0-9]*\.?[0-9]+)\s*\//y],
  ["rule", /<([A-Za-z][\w.-]*(?:\.\*)?)>/y],
  ["tag", /\{([^{}]*)\}/y],
  ["word", /"([^"\n]+)"/y],
  ["word", /[^\s=;|*+()[\]{}<>/"]+/y],
  ["mark", /[=;|*+()[\]]/y],
]

/** All tokens of one grammar file; `file` only names it in errors. */
export function readJsgfTokens(text: string, file: string): JsgfToken[] {
  const tokens: JsgfToken[] = []
  let at = 0
  let line = 1
  while (at < text.length) {
    const found = matchAt(text, at)
    if (!found) throw new GrammarError(file, line, `cannot read ${JSON.stringify(text.slice(at, at + 20))}`)
    const { kind, whole, inner } = found
    if (kind !== "nothing") tokens.push({ kind, text: kind === "word" ? inner.toLowerCase() : inner, line })
    line += whole.split("\n").length - 1
    at += whole.length
  }
  return tokens
}

function matchAt(text: string, at: number) {
  for (const [kind, shape] of shapes) {
    shape.lastIndex = at
    const match = shape.exec(text)
    if (match) return { kind, whole: match[0], inner: match[1] ?? match[0] }
  }
  return null
}
