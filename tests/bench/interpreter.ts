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
import { PhraseFinder } from "../../src/grammar/PhraseFinder"
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
    const numbers = Array.from({ length: times }, (_, copy) => ruleName(numberRule, copy))
    const matcher = new GrammarMatcher(set, new Set(numbers))
    const rules = [...set.values()]
      .filter((rule) => rule.isPublic && !/^(ear|numbers)/.test(rule.fullName))
      .map((rule) => rule.fullName)
    const finder = new PhraseFinder(matcher, rules)
    const sample = lines.filter((_, index) => index % 8 === 0)
    for (const line of sample) findAll(matcher, finder, numbers, line.text)
    const started = performance.now()
    const found = sample.reduce((sum, line) => sum + findAll(matcher, finder, numbers, line.text), 0)
    const took = (1000 * (performance.now() - started)) / sample.length
    console.log(
      `${rules.length} public rules: ${took.toFixed(1)} µs to find ${Math.round(found / sample.length)} phrases`,
    )
  }
}

const ruleName = (rule: string, copy: number) => (copy === 0 ? rule : rule.replace(".", `${copy}.`))
const renamed = (text: string, copy: number) =>
  copy === 0 ? text : text.replace(/grammar (\w+);/, `grammar $1${copy};`).replace(/<(\w+)\./g, `<$1${copy}.`)

/** Phrases found where every word may also be a number. */
function findAll(matcher: GrammarMatcher, finder: PhraseFinder, numbers: readonly string[], text: string): number {
  const words = text
    .toLowerCase()
    .split(/[^a-z']+/)
    .filter((word) => word !== "")
  const forms = numbers.map((rule) => ({ word: matcher.words.idOf(formOf(rule)), doubt: 0 }))
  const classes = words.map((word) => finder.classOf([{ word: matcher.words.idOf(word), doubt: 0 }, ...forms], false))
  return finder.find({ classes, givenEnds: words.map(() => 0), isEdge: () => false }).length
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
