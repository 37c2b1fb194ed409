/**
 * Words somebody else has already taken down: WebVTT, SubRip, plain text or JSON lines, as utterances. The times inside
 * a file are kept; plain text without times gets one second a line, so that the order stands. What is damaged is left out
 * and said, and what stands beside it is kept.
 */
import { parseText } from "media-captions"
import type { Heard } from "../facts/Heard"
import { done, type Outcome, refuse } from "../facts/Outcome"

/** Transcripts over this size are not of one visit and are refused. */
export const mostCharacters = 5_000_000
/** No one utterance is longer, and none lies a week after the beginning. */
const [mostLetters, mostSeconds] = [20_000, 7 * 86_400]

/** How the names of transcripts end. */
export const transcriptKinds = ["vtt", "srt", "txt", "jsonl"] as const
export type TranscriptKind = (typeof transcriptKinds)[number]

const toHeard = (text: string, start: number, end: number, index: number): Heard => ({
  id: `line-${index + 1}`,
  text: text.replace(/\s+/g, " ").trim(),
  alternatives: [],
  words: [],
  start,
  end,
  engine: "transcript",
  margin: null,
})

/** Told of what was left out or put right, in plain words. */
export type OnFault = (fault: string) => void

const isTime = (seconds: number) => seconds >= 0 && seconds <= mostSeconds

/** Stands in a text for bytes that are none. */
const noText = "\uFFFD"

/** Leaves out what is too long or holds bytes that are no text, and gives an utterance whose time cannot be the time of the one before. */
const settle = (heards: readonly Heard[], onFault: OnFault): Heard[] => {
  let last = 0
  return heards.flatMap((heard, at) => {
    if (heard.text.length > mostLetters) {
      onFault(`Utterance ${at + 1} has over ${mostLetters} letters and was left out.`)
      return []
    }
    if (heard.text.includes(noText)) {
      onFault(`Utterance ${at + 1} holds bytes that are no text and was left out.`)
      return []
    }
    const fits = isTime(heard.start) && isTime(heard.end)
    if (!fits) onFault(`Utterance ${at + 1} has a time that cannot be; it was taken to follow the one before.`)
    const settled = fits ? heard : { ...heard, start: last, end: last }
    last = settled.end
    return [settled]
  })
}

const readCaptions = async (text: string, kind: "vtt" | "srt", onFault: OnFault): Promise<Outcome<Heard[]>> => {
  const { cues, errors } = await parseText(text, { type: kind, strict: false, errors: true })
  if (cues.length === 0) {
    const why = errors[0] ? ` (${errors[0].message})` : ""
    return refuse(`No spoken line could be read from this ${kind === "vtt" ? "WebVTT" : "SubRip"} file${why}.`)
  }
  for (const { line, message } of errors) onFault(`Line ${line}: ${message}.`)
  const plain = (cueText: string) => cueText.replace(/<[^<>]*>/g, "")
  return done(cues.map((cue, index) => toHeard(plain(cue.text), cue.startTime, cue.endTime, index)))
}

const readPlain = (text: string): Outcome<Heard[]> => {
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== "")
  return done(lines.map((line, index) => toHeard(line, index, index + 1, index)))
}

interface JsonLine {
  text?: unknown
  start?: unknown
  end?: unknown
  alternatives?: unknown
}

const readJsonLine = (line: string, index: number): Heard | null => {
  try {
    const value = JSON.parse(line) as JsonLine
    if (typeof value?.text !== "string") return null
    const start = typeof value.start === "number" ? value.start : index
    const end = typeof value.end === "number" ? value.end : start + 1
    const alternatives = Array.isArray(value.alternatives)
      ? value.alternatives.filter((one) => typeof one === "string")
      : []
    return { ...toHeard(value.text, start, end, index), alternatives }
  } catch {
    return null
  }
}

const readJsonLines = (text: string, onFault: OnFault): Outcome<Heard[]> => {
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== "")
  const read = lines.map(readJsonLine)
  const heards = read.filter((heard) => heard !== null)
  const because = (at: number) => `Line ${at + 1} is not a JSON object with a "text".`
  if (heards.length === 0) return refuse(because(0))
  for (const [at, heard] of read.entries()) if (heard === null) onFault(because(at))
  return done(heards)
}

/**
 * Utterances of a transcript, in order; refuses what holds none, in plain words. `onFault` is told of each part that had
 * to be left out: nothing is left out in silence.
 */
export const readTranscript = async (
  text: string,
  kind: TranscriptKind,
  onFault: OnFault,
): Promise<Outcome<Heard[]>> => {
  if (text.trim() === "") return refuse("The file is empty.")
  if (text.length > mostCharacters) return refuse("The file is too large for a transcript of one visit (over 5 MB).")
  if (text.includes("\u0000")) return refuse("The file is not text.")
  const read =
    kind === "vtt" || kind === "srt"
      ? await readCaptions(text, kind, onFault)
      : kind === "txt"
        ? readPlain(text)
        : readJsonLines(text, onFault)
  return read.ok ? done(settle(read.value, onFault)) : read
}
