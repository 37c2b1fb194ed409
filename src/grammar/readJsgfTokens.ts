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
  ["nothing", /(\s+)/],
  ["doc", /\/\*\*([\s\S]*?)\*\//],
  ["nothing", /(\/\*[\s\S]*?\*\/)/],
  ["nothing", /(\/\/[^\n]*)/],
  ["weight", /\/\s*([0-9]*\.?[0-9]+)\s*\//],
  ["rule", /<([A-Za-z][\w.-]*(?:\.\*)?)>/],
  ["tag", /\{([^{}]*)\}/],
  ["word", /"([^"\n]+)"/],
  ["word", /([^\s=;|*+()[\]{}<>/"]+)/],
  ["mark", /([=;|*+()[\]])/],
]

/** All shapes in one expression with a group each, as trying them one by one is most of the time of a start. */
const anyShape = new RegExp(shapes.map(([, shape]) => shape.source).join("|"), "y")

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
    if (whole.includes("\n")) line += whole.split("\n").length - 1
    at += whole.length
  }
  return tokens
}

function matchAt(text: string, at: number) {
  anyShape.lastIndex = at
  const match = anyShape.exec(text)
  if (!match) return null
  const group = match.findIndex((inner, index) => index > 0 && inner !== undefined)
  return { kind: shapes[group - 1]![0], whole: match[0], inner: match[group]! }
}
