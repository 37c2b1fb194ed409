/**
 * What interpreting costs, and what it would cost with many more rules; and how general number readers fare on the
 * lines that hold numbers, when each is used as its own documentation shows. The readers know nothing of our fields and
 * cannot ask, so the table says what it would mean to trust a number found in the words, not which library is good. Ours
 * is loaded as it is built for the page, as theirs come built from the registry.
 * Rates are of processor time, the best round of a few seconds, the same for all, so that what else runs on the machine
 * counts little; lines that were never heard before are timed as well, since ours keeps what it learned.
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
import { numberRule } from "../../src/interpret/islandRules"
import { type Labelled, readLabelled, scoreLine } from "../utterances/scoreLine"
import { importBuilt } from "./built/importBuilt"

type Front = typeof import("../../src/interpret/createInterpreter")

const files = readGrammars()
const { createInterpreter } = await importBuilt<Front>("src/interpret/createInterpreter.ts")
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
  const hear = (line: Labelled) => interpreter.interpret(line.text, line.context)
  console.log(`${lines.length} utterances: ${rate(hear, lines)} a second`)
  const took = lines.map(() => Number.POSITIVE_INFINITY)
  for (let round = 0; round < 5; round += 1)
    for (const [place, line] of lines.entries()) {
      const started = performance.now()
      hear(line)
      took[place] = Math.min(took[place]!, performance.now() - started)
    }
  took.sort((one, other) => one - other)
  console.log(`median ${at(took, 0.5)} ms, p99 ${at(took, 0.99)} ms, worst ${took.at(-1)!.toFixed(2)} ms`)
  console.log(`each for the first time: ${rateOfUnheard(lines)} a second`)
  const long = lines
    .map((line) => line.text)
    .join(" ")
    .slice(0, 1500)
  const started = performance.now()
  interpreter.interpret(long)
  console.log(`1,500 characters in one breath: ${(performance.now() - started).toFixed(1)} ms`)
}

/**
 * What is kept of words and phrases must not flatter: a new interpreter hears every second of all lines, and then those
 * of the sample that are left are timed, once each.
 */
function rateOfUnheard(sample: readonly Labelled[]): number {
  const heard = new Set(lines.filter((_, place) => place % 2 === 0))
  const left = sample.filter((line) => !heard.has(line))
  let best = 0
  for (let round = 0; round < 4; round += 1) {
    const fresh = createInterpreter(files)
    for (const line of heard) fresh.interpret(line.text, line.context)
    best = Math.max(
      best,
      roundOf((line) => fresh.interpret(line.text, line.context), left),
    )
  }
  return Math.round(best)
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

type Reader = (text: string, asked: string) => number | null
const { English } = recognizers.Culture
const lastOf = (found: ReadonlyArray<{ resolution?: Record<string, unknown> | null }>) => found[0]?.resolution ?? null
const numberIn = (text: string): number | null => {
  const found = lastOf(recognizers.recognizeNumber(text, English))
  return found ? Number(found.value) : null
}
/** Powers of ten from a unit of theirs to ours. */
const powers: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  length: { Meter: 0, Centimeter: -2, Millimeter: -3 },
  distance: { Meter: 3, Centimeter: 1, Millimeter: 0 },
}
const measureIn = (text: string, asked: string): number | null => {
  const found = lastOf(recognizers.recognizeDimension(text, English))
  const power = powers[asked]?.[String(found?.unit)]
  return found && power !== undefined ? Number(`${found.value}e${power}`) : numberIn(text)
}
/** Numbers alone, which is less than the job; numbers with their units; and with times, as we read both. */
const readers: Record<string, Reader> = {
  "words-to-numbers": (text) => firstNumber(String(wordsToNumbers(text) ?? "")),
  "compromise, numbers and their units": (text) =>
    (compromise(text).numbers().json() as Array<{ number?: { num: number } }>).at(-1)?.number?.num ?? null,
  "recognizers, numbers only": numberIn,
  "recognizers, numbers and units": measureIn,
  "recognizers, numbers, units and times": (text, asked) => {
    recognizers.recognizeDateTime(text, English)
    return measureIn(text, asked)
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
  const own = rate((line) => interpreter.interpret(line.text, line.context), asked)
  const ownFirst = rateOfUnheard(asked)
  console.log(`  ${own} of these lines a second; each for the first time, ${ownFirst}`)
  for (const [name, read] of Object.entries(readers)) {
    const ask = (line: Labelled) => read(line.text, line.context!.asked!)
    print(
      name,
      asked.map((line) => scoreReader(line, ask(line))),
    )
    const theirs = rate(ask, asked)
    const times = (ours: number) => (ours / theirs).toFixed(1)
    console.log(`  ${theirs} of these lines a second; ours are ${times(own)} times as many, first ${times(ownFirst)}`)
  }
}

/** Processor time that each reader has, in microseconds; a slow one still has its two rounds. */
const timeForEach = 3e6

/** Lines a second in the best of the rounds. */
function rate(read: (line: Labelled) => unknown, asked: readonly Labelled[]): number {
  const began = process.cpuUsage().user
  let best = 0
  for (let round = 0; round < 2 || process.cpuUsage().user - began < timeForEach; round += 1)
    best = Math.max(best, roundOf(read, asked))
  return Math.round(best)
}

/** Lines a second of processor time, over all of them once. */
function roundOf(read: (line: Labelled) => unknown, asked: readonly Labelled[]): number {
  const before = process.cpuUsage()
  for (const line of asked) read(line)
  const { user, system } = process.cpuUsage(before)
  return (1e6 * asked.length) / (user + system)
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
