/**
 * Lines in, facts out: each line is plain text, or a JSON object with "text" and an optional "context". A bad line gets
 * one plain complaint with its number, and the rest goes on. A plain line that begins with a brace is taken for JSON.
 */
import { z } from "zod"
import { Context } from "../facts/Interpretation"
import type { Interpreter } from "../interpret/createInterpreter"
import type { Console, ExitStatus } from "./Console"

const Line = z.object({ text: z.string(), context: Context.optional() })

type Read = { text: string; context: Context } | { complaint: string } | null

/** Prints one JSON line for every line read; 2 when any line was bad. */
export async function interpretLines(
  interpreter: Interpreter,
  { lines, print, complain }: Console,
): Promise<ExitStatus> {
  let status: ExitStatus = 0
  let number = 0
  for await (const line of lines()) {
    number += 1
    const read = readLine(line)
    if (read === null) continue
    if ("complaint" in read) {
      complain(`Line ${number}: ${read.complaint}`)
      status = 2
      continue
    }
    const { facts, ask, command } = interpreter.interpret(read.text, read.context)
    print(JSON.stringify({ text: read.text, facts, ask, ...(command ? { command } : {}) }))
  }
  return status
}

function readLine(line: string): Read {
  const text = line.replace(/^\uFEFF/, "").trim()
  if (text === "") return null
  if (!text.startsWith("{")) return { text, context: {} }
  const json = parseJson(text)
  if (json === undefined) return { complaint: "this is not JSON." }
  const parsed = Line.safeParse(json)
  if (parsed.success) return { text: parsed.data.text, context: parsed.data.context ?? {} }
  const fault = parsed.error.issues[0]
  return { complaint: `"${fault?.path.join(".") || "line"}" is not what was expected: ${fault?.message ?? "unknown"}.` }
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}
