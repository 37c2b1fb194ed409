/**
 * Words somebody else has already taken down: WebVTT, SubRip, plain text or JSON lines, as utterances. The times inside
 * a file are kept; plain text without times gets one second a line, so that the order stands.
 */
import { parseText } from "media-captions"
import type { Heard } from "../facts/Heard"
import { done, type Outcome, refuse } from "../facts/Outcome"

/** Transcripts over this size are not of one visit and are refused. */
export const mostCharacters = 5_000_000

export type TranscriptKind = "vtt" | "srt" | "txt" | "jsonl"

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

const readCaptions = async (text: string, kind: "vtt" | "srt"): Promise<Outcome<Heard[]>> => {
  const { cues, errors } = await parseText(text, { type: kind, strict: false, errors: true })
  if (cues.length === 0) {
    const why = errors[0] ? ` (${errors[0].message})` : ""
    return refuse(`No spoken line could be read from this ${kind === "vtt" ? "WebVTT" : "SubRip"} file${why}.`)
  }
  const plain = (cueText: string) => cueText.replace(/<[^>]*>/g, "")
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

const readJsonLines = (text: string): Outcome<Heard[]> => {
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== "")
  const heard = lines.map(readJsonLine)
  const bad = heard.indexOf(null)
  if (bad >= 0) return refuse(`Line ${bad + 1} is not a JSON object with a "text".`)
  return done(heard as Heard[])
}

/** Utterances of a transcript, in order; refuses what holds none, in plain words. */
export const readTranscript = async (text: string, kind: TranscriptKind): Promise<Outcome<Heard[]>> => {
  if (text.trim() === "") return refuse("The file is empty.")
  if (text.length > mostCharacters) return refuse("The file is too large for a transcript of one visit (over 5 MB).")
  if (text.includes("\u0000")) return refuse("The file is not text.")
  if (kind === "vtt" || kind === "srt") return readCaptions(text, kind)
  return kind === "txt" ? readPlain(text) : readJsonLines(text)
}
