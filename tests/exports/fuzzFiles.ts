/**
 * Files as they come out of bad cards, wrong programs and ill will: whole ones that are cut, turned, swapped, swollen,
 * nested, written in another encoding or filled with script. Every one is made from a number, so that a bad one can be
 * made again.
 */
import { gzipSync, zipSync } from "fflate"
import { writeJobFile } from "../../src/record/jobFile"
import type { LogLine } from "../../src/record/LogLine"

/** A row of numbers from 0 to 1 that a seed decides (mulberry32). */
export const randomFrom = (seed: number) => {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
}
type Random = ReturnType<typeof randomFrom>

const below = (random: Random, count: number) => Math.floor(random() * count)
const pick = <T>(random: Random, from: readonly T[]): T => from[below(random, from.length)]!

export const hostileTexts: readonly string[] = [
  "<script>alert(1)</script>",
  "<img src=x onerror=alert(1)>",
  "=cmd|' /C calc'!A0",
  'a;"=HYPERLINK(""http://x"")',
  "+1",
  "@sum(1)",
  "\t=1",
  "../../../etc/passwd",
  "..\\..\\boot.ini",
  "con.pdf",
  "a\n\n00:00:00.000 --> 00:00:09.000\nx",
  "-->",
  "(\\)) Tj ET endstream endobj",
  "/JavaScript /OpenAction <</S/JS>>",
  "\u0000\u0007\u001B[31m",
  "\u202Egnp.exe",
  "漢字 العربية 😀",
  "\uD800",
  "__proto__",
  "$(process.exit(1))",
  "`rm -rf`; $(reboot)",
  "%s%n%d",
  "' OR 1=1 --",
  "x".repeat(1999),
]

/** The same job with a hostile text wherever words may stand, with a chain that fits. */
const withHostileTexts = (lines: readonly LogLine[], random: Random): string => {
  const text = () => pick(random, hostileTexts)
  const changed = lines.map((line): LogLine => {
    if (line.type === "job_opened")
      return { ...line, place: text().slice(0, 200), pack: pick(random, [line.pack, text()]) }
    if (line.type === "heard") return { ...line, heard: { ...line.heard, text: text(), engine: text() } }
    if (line.type === "said") return { ...line, words: text(), warns: [text(), ...line.warns] }
    if (line.type === "entry" && random() < 0.3) {
      return { ...line, fact: { kind: "note", value: text() }, origin: { by: "hand", reason: text() } }
    }
    return { ...line, by: text(), device: text() }
  })
  const more: LogLine[] = [
    { ...stampOf(changed), type: "kept", warning: text(), reason: text().slice(0, 500) },
    { ...stampOf(changed, 1), type: "signed_off", role: text(), undone: [text()] },
    { ...stampOf(changed, 2), type: "reopened", because: text() },
  ]
  return writeJobFile([...changed, ...more])
}

const stampOf = (lines: readonly LogLine[], ahead = 0) => {
  const { v, job, at, by, device, seq } = lines.at(-1)!
  return { v, job, at, by, device, seq: seq + 1 + ahead, id: `more-${ahead}` }
}

const toBytes = (text: string) => new TextEncoder().encode(text)

const inUtf16 = (text: string, swap: boolean): Uint8Array => {
  const bytes = new Uint8Array(2 + 2 * text.length)
  const view = new DataView(bytes.buffer)
  view.setUint16(0, 0xfeff, !swap)
  for (let at = 0; at < text.length; at++) view.setUint16(2 + 2 * at, text.charCodeAt(at), !swap)
  return bytes
}

type Damage = (text: string, random: Random) => string | Uint8Array

const nested = (depth: number) => `${'{"x":'.repeat(depth)}1${"}".repeat(depth)}`

/** Each way to spoil a text file. */
export const damages: Readonly<Record<string, Damage>> = {
  cut: (text, random) => text.slice(0, below(random, text.length)),
  headless: (text, random) => text.slice(below(random, text.length)),
  flipped: (text, random) => {
    const bytes = toBytes(text)
    for (let count = 1 + below(random, 40); count > 0; count--) {
      const at = below(random, bytes.length)
      bytes[at] = bytes[at]! ^ (1 << below(random, 8))
    }
    return bytes
  },
  random: (text, random) => toBytes(text).map((byte) => (random() < 0.2 ? below(random, 256) : byte)),
  swapped: (text, random) => {
    const lines = text.split("\n")
    for (let count = 1 + below(random, 9); count > 0; count--) {
      const [one, other] = [below(random, lines.length), below(random, lines.length)]
      ;[lines[one], lines[other]] = [lines[other]!, lines[one]!]
    }
    return lines.join("\n")
  },
  doubled: (text, random) => {
    const lines = text.split("\n")
    return lines.flatMap((line) => (random() < 0.2 ? [line, line] : random() < 0.1 ? [] : [line])).join("\n")
  },
  swollen: (text, random) => {
    const lines = text.split("\n")
    lines.splice(below(random, lines.length), 0, pick(random, ["a", '{"', "[", " ", "<v "]).repeat(300_000))
    return lines.join("\n")
  },
  nested: (text, random) => {
    const deep = nested(pick(random, [100, 5000, 60_000]))
    const lines = text.split("\n")
    const at = below(random, lines.length)
    lines[at] = random() < 0.5 ? deep : lines[at]!.replace(/"v":1/, () => `"v":1,"z":${deep}`)
    return lines.join("\n")
  },
  absurd: (text, random) => {
    const figures = ["1e999", "-1", "-0", "9007199254740993", "1e-320", "null", "[]", '"x"', "true"]
    return text.replaceAll(/-?\b\d+(\.\d+)?\b/g, (found) => (random() < 0.04 ? pick(random, figures) : found))
  },
  renamed: (text, random) =>
    text.replaceAll(/"(fact|heard|kind|type|line|at|seq|value)"/g, (found) =>
      random() < 0.05 ? pick(random, ['"__proto__"', '"constructor"', '"toString"', '""']) : found,
    ),
  zeros: (text, random) => {
    const at = below(random, text.length)
    return `${text.slice(0, at)}${"\u0000".repeat(1 + below(random, 2000))}${text.slice(at)}`
  },
  lineEnds: (text, random) => text.replaceAll("\n", () => pick(random, ["\r\n", "\r", "\n\n", "\u2028", "\n"])),
  utf16: (text, random) => inUtf16(text, random() < 0.5),
  latin1: (text) => Uint8Array.from(`é${text}`, (letter) => letter.charCodeAt(0) & 0xff),
  marked: (text) => `\uFEFF${text}`,
  zipped: (text, random) =>
    random() < 0.5 ? gzipSync(toBytes(text.slice(0, 9999))) : zipSync({ "../../x": new Uint8Array(1_000_000) }),
  nothing: (_, random) => pick(random, ["", " ", "\n", "{}", "null", "[]", "\u0000", "%PDF-1.7", "WEBVTT", "0"]),
}

export interface FuzzFile {
  kind: "job" | "vtt" | "srt" | "txt" | "jsonl"
  damage: string
  /** A file's name that nobody should follow. */
  name: string
  bytes: Uint8Array
}

export interface FuzzSources {
  lines: readonly LogLine[]
  job: string
  vtt: string
}

const plainOf = (vtt: string) => vtt.replaceAll(/<[^>]*>/g, "")
const srtOf = (vtt: string) => vtt.replace(/^WEBVTT\s+/, "").replaceAll(/(\d\d:\d\d:\d\d)\.(\d\d\d)/g, "$1,$2")

const sourceOf = (kind: FuzzFile["kind"], sources: FuzzSources, random: Random): string => {
  switch (kind) {
    case "job":
      return random() < 0.4 ? withHostileTexts(sources.lines, random) : sources.job
    case "vtt":
      return sources.vtt
    case "srt":
      return srtOf(sources.vtt)
    case "txt":
      return plainOf(sources.vtt)
    case "jsonl":
      return plainOf(sources.vtt)
        .split("\n")
        .map((text, at) => JSON.stringify({ text: random() < 0.2 ? pick(random, hostileTexts) : text, start: at }))
        .join("\n")
  }
}

/** The file of a number. A tenth of them is not damaged at all but holds what hostile texts it was made with. */
export const fuzzFile = (seed: number, sources: FuzzSources): FuzzFile => {
  const random = randomFrom(seed)
  const kind = pick(random, ["job", "job", "job", "vtt", "srt", "txt", "jsonl"] as const)
  const source = sourceOf(kind, sources, random)
  const damage = random() < 0.1 ? "whole" : pick(random, Object.keys(damages))
  const spoiled = damage === "whole" ? source : damages[damage]!(source, random)
  const bytes = typeof spoiled === "string" ? toBytes(spoiled) : spoiled
  return { kind, damage, name: pick(random, hostileTexts), bytes }
}
