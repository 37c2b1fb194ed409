/**
 * What interpreting costs, and what it would cost with many more rules; and how general number readers fare on the
 * lines that hold numbers, when each is used as its own documentation shows. The readers know nothing of our fields and
 * cannot ask, so the table says what it would mean to trust a number found in the words, not which library is good.
 */
import { readdirSync } from "node:fs"
import { join } from "node:path"
import recognizers from "@microsoft/recognizers-text-suite"
import compromise from "compromise"
import { wordsToNumbers } from "words-to-numbers"
import { readGrammars } from "../../src/cli/readGrammars"
import { formOf } from "../../src/grammar/compileRules"
import { GrammarMatcher } from "../../src/grammar/GrammarMatcher"
import { linkGrammars } from "../../src/grammar/linkGrammars"
import { parseJsgf } from "../../src/grammar/parseJsgf"
import { createInterpreter } from "../../src/interpret/createInterpreter"
import { numberRule } from "../../src/interpret/islandRules"
import { type Labelled, readLabelled, scoreLine } from "../utterances/scoreLine"

const files = readGrammars()
const interpreter = createInterpreter(files)
const folder = join(import.meta.dirname, "../utterances")
const lines = readdirSync(folder)
  .filter((name) => name.endsWith(".jsonl"))
  .flatMap(readLabelled)

/** Prints the figures. */
export async function run(): Promise<void> {
  reportSpeed()
  reportRules()
  reportReaders()
}

function reportSpeed(): void {
  for (const line of lines) interpreter.interpret(line.text, line.context)
  const took: number[] = []
  for (const line of lines) {
    const started = performance.now()
    interpreter.interpret(line.text, line.context)
    took.push(performance.now() - started)
  }
  took.sort((one, other) => one - other)
  const total = took.reduce((sum, one) => sum + one, 0)
  console.log(`${lines.length} utterances: ${Math.round((1000 * lines.length) / total)} a second`)
  console.log(`median ${at(took, 0.5)} ms, p99 ${at(took, 0.99)} ms, worst ${took.at(-1)!.toFixed(2)} ms`)
  const long = lines
    .map((line) => line.text)
    .join(" ")
    .slice(0, 1500)
  const started = performance.now()
  interpreter.interpret(long)
  console.log(`1,500 characters in one breath: ${(performance.now() - started).toFixed(1)} ms`)
}

const at = (sorted: readonly number[], part: number) => sorted[Math.floor(sorted.length * part)]!.toFixed(2)

/** The same grammars again under other names, all of them matching: the worst that more trades could add. */
function reportRules(): void {
  const texts = Object.entries(files).filter(([name]) => name.endsWith(".jsgf"))
  for (const times of [1, 4, 16]) {
    const copies = Array.from({ length: times }, (_, copy) =>
      texts.map(([name, text]) => parseJsgf(renamed(text, copy), name)),
    )
    const set = linkGrammars(copies.flat())
    const matcher = new GrammarMatcher(
      set,
      new Set(Array.from({ length: times }, (_, copy) => ruleName(numberRule, copy))),
    )
    const rules = [...set.values()]
      .filter((rule) => rule.isPublic && !/^(ear|numbers)/.test(rule.fullName))
      .map((rule) => rule.fullName)
    const sample = lines.filter((_, index) => index % 8 === 0)
    const started = performance.now()
    for (const line of sample) matchAll(matcher, rules, line.text)
    console.log(
      `${rules.length} public rules: ${((performance.now() - started) / sample.length).toFixed(2)} ms of matching an utterance`,
    )
  }
}

const ruleName = (rule: string, copy: number) => (copy === 0 ? rule : rule.replace(".", `${copy}.`))
const renamed = (text: string, copy: number) =>
  copy === 0 ? text : text.replace(/grammar (\w+);/, `grammar $1${copy};`).replace(/<(\w+)\./g, `<$1${copy}.`)

function matchAll(matcher: GrammarMatcher, rules: readonly string[], text: string): void {
  const words = text
    .toLowerCase()
    .split(/[^a-z']+/)
    .filter((word) => word !== "")
  const forms = words.map((word) => [
    { word, doubt: 0 },
    { word: formOf(numberRule), doubt: 0 },
  ])
  const row = {
    length: words.length,
    forms,
    isSkippable: () => false,
    isEdge: () => false,
    given: (rule: string, place: number) =>
      /^numbers\d*\.number$/.test(rule) ? [{ end: place + 1, tags: [] }] : undefined,
  }
  const session = matcher.over(row)
  for (let place = 0; place < words.length; place += 1)
    for (const rule of rules) if (matcher.mayBegin(rule, place, row)) session.match(rule, place)
}

type Reader = (text: string) => number | null
const readers: Record<string, Reader> = {
  "words-to-numbers": (text) => firstNumber(String(wordsToNumbers(text) ?? "")),
  compromise: (text) =>
    (compromise(text).numbers().json() as Array<{ number?: { num: number } }>).at(-1)?.number?.num ?? null,
  recognizers: (text) => {
    const found = recognizers.recognizeNumber(text, recognizers.Culture.English)[0]
    return found ? Number(found.resolution?.value) : null
  },
  parseFloat: firstNumber,
}

function firstNumber(text: string): number | null {
  const match = /\d*\.?\d+/.exec(text)
  return match ? Number.parseFloat(match[0]) : null
}

const measured = new Set(["conductor_csa", "neutral_csa", "length", "distance", "resistance", "fuse_rating"])

/** Lines that were asked one measure: one number to find, or one question to ask. */
function reportReaders(): void {
  const asked = lines.filter((line) => measured.has(line.context?.asked ?? ""))
  console.log(`\n${asked.length} lines under a question for a measure     fatal   lost   annoying`)
  const ours = asked.map((line) => scoreLine(line, interpreter.interpret(line.text, line.context)))
  print(
    "Bothhands",
    ours.map((score) => (score === "unasked" ? "fine" : score)),
  )
  console.log(`  ${rate((line) => interpreter.interpret(line.text, line.context), asked)} of these lines a second`)
  for (const [name, read] of Object.entries(readers)) {
    print(
      name,
      asked.map((line) => scoreReader(line, read(line.text))),
    )
    console.log(`  ${rate((line) => read(line.text), asked)} of these lines a second`)
  }
}

/** Lines a second, over all of them once; each was read once before. */
function rate(read: (line: Labelled) => unknown, asked: readonly Labelled[]): number {
  const started = performance.now()
  for (const line of asked) read(line)
  return Math.round((1000 * asked.length) / (performance.now() - started))
}

/** A wrong number taken is fatal, a right one missed is lost; a reader without a question never annoys. */
function scoreReader(line: Labelled, value: number | null): string {
  const wanted = line.expect.find((fact) => fact.kind === line.context?.asked)
  if (value === null || Number.isNaN(value)) return wanted && wanted.value !== null ? "lost" : "fine"
  return wanted?.value === value ? "fine" : "fatal"
}

function print(name: string, scores: readonly string[]): void {
  const count = (score: string) => String(scores.filter((one) => one === score).length).padStart(6)
  console.log(`${name.padEnd(46)} ${count("fatal")} ${count("lost")} ${count("annoying")}`)
}
