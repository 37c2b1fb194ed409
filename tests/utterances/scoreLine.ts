/** Reads labelled utterances and scores one of them: fatal, lost, annoying or fine. */
import { readFileSync } from "node:fs"
import { join } from "node:path"
import type { Context, Interpretation } from "../../src/facts/Interpretation"

export interface Labelled {
  id: string
  cat: string
  text: string
  context?: Context
  expect: Array<Record<string, unknown>>
  expectAsk: boolean
  ask?: { kind: string }
}

export type Score = "fine" | "fatal" | "lost" | "annoying" | "unasked"

export const readLabelled = (name: string): Labelled[] =>
  readFileSync(join(import.meta.dirname, name), "utf8")
    .trim()
    .split("\n")
    .map((line) => JSON.parse(line) as Labelled)

const keyOf = (fact: Record<string, unknown>) =>
  JSON.stringify(["kind", "field", "value", "unit", "qualifier", "subject"].map((name) => fact[name] ?? null))

/**
 * Worst first: a fact that was not meant is fatal; a fact meant but neither written nor asked about is lost; a question
 * where none was needed is annoying; a doubt that passed in silence is unasked.
 */
export function scoreLine(line: Labelled, result: Interpretation): Score {
  const wanted = new Set(line.expect.map(keyOf))
  const got = new Set(result.facts.map((fact) => keyOf(fact as Record<string, unknown>)))
  if ([...got].some((key) => !wanted.has(key))) return "fatal"
  const isMissing = [...wanted].some((key) => !got.has(key))
  if (line.expectAsk) return result.ask ? "fine" : "unasked"
  if (result.ask) return "annoying"
  return isMissing ? "lost" : "fine"
}
