/**
 * An hour of a visit as somebody dictated it: labelled sentences that name their part and need no context, talk that must
 * give nothing, and the sample job, which goes from part to part. Each sentence carries what it means.
 */
import { readdirSync, readFileSync } from "node:fs"
import { parse } from "yaml"
import { seededRandom } from "../../src/cli/grammarTools"
import type { Heard } from "../../src/facts/Heard"
import { type Labelled, readLabelled } from "../utterances/scoreLine"

/** Seconds from the start of one sentence to the start of the next. */
const every = 7
const seconds = 3600

const namesItsPart = ({ context, expect, expectAsk }: Labelled) =>
  context === undefined && !expectAsk && expect.some((fact) => fact.kind === "service") && expect.length > 1

const isTalk = ({ context, expect, expectAsk, cat }: Labelled) =>
  context === undefined && cat === "chatter" && expect.length === 0 && !expectAsk

const labelled = (): Labelled[] =>
  readdirSync("tests/utterances")
    .filter((name) => name.endsWith(".jsonl"))
    .flatMap(readLabelled)

const sampleJob = (): string[] =>
  (parse(readFileSync("samples/bakery.script.yaml", "utf8")) as { lines: { text: string; chatter?: boolean }[] }).lines
    .filter((line) => !line.chatter)
    .map((line) => line.text)

const shuffled = <T>(all: readonly T[], seed: number): T[] => {
  const random = seededRandom(seed)
  const keyed = all.map((one) => ({ one, key: random() }))
  return keyed.sort((a, b) => a.key - b.key).map(({ one }) => one)
}

/** The sentences of the hour, in order: about one in five is talk. */
export const wholeHour = (): string[] => {
  const all = labelled()
  const named = shuffled(all.filter(namesItsPart), 1).map((line) => line.text)
  const talk = shuffled(all.filter(isTalk), 2).map((line) => line.text)
  const job = sampleJob()
  const wanted = Math.floor(seconds / every)
  const mixed = Array.from({ length: wanted - job.length }, (_, at) => {
    const [from, place] = at % 5 === 4 ? [talk, Math.floor(at / 5)] : [named, at - Math.floor(at / 5)]
    return from[place % from.length]!
  })
  return [...job, ...mixed]
}

/** Sentences as a transcript gives them, spread over the hour. */
export const asHeard = (texts: readonly string[]): Heard[] =>
  texts.map((text, at) => ({
    id: `line-${at + 1}`,
    text,
    alternatives: [],
    words: [],
    start: at * every,
    end: at * every + 4,
    engine: "transcript",
    margin: null,
  }))

/** The same as a WebVTT file. */
export const asVtt = (texts: readonly string[]): string => {
  const time = (at: number) => new Date(at * 1000).toISOString().slice(11, 23)
  const cues = texts.map((text, at) => `${time(at * every)} --> ${time(at * every + 4)}\n${text}\n`)
  return `WEBVTT\n\n${cues.join("\n")}`
}
