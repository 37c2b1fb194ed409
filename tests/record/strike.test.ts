/** Words struck out of a log: gone from every place that held them, and the chain of hashes still whole around them. */
import { readFileSync } from "node:fs"
import { expect, test } from "vitest"
import { chainOf } from "../../src/record/chain"
import { readJobFile, writeJobFile } from "../../src/record/jobFile"
import { LogLine } from "../../src/record/LogLine"
import { repeatsOf, strike } from "../../src/record/strike"

const bakery = readJobFile(readFileSync("samples/bakery.bothhands.jsonl", "utf8"))
if (!bakery.ok) throw new Error(bakery.because)

/** The sample with an utterance that also holds something private. */
const secret = "my daughter is ill"
const lines = bakery.value.lines.map((line): LogLine => {
  if (line.type !== "heard" || line.heard.id !== "line-2") return line
  const text = `${secret} supply neutral twenty five square`
  const words = text.split(" ").map((word, index) => ({ text: word, start: index, end: index + 0.9 }))
  return { ...line, heard: { ...line.heard, text, words, alternatives: [`my doctor is ill ${text.slice(19)}`] } }
})

const lineOf = (heard: string): string =>
  lines.find((line) => line.type === "heard" && line.heard.id === heard)?.id ?? ""

const strikeOf = (log: readonly LogLine[], from = 0, to = secret.length) => {
  const struck = strike(log, { of: lineOf("line-2"), from, to, because: "private" })
  if (!struck.ok) throw new Error(struck.because)
  return struck.value
}

const stamped = (log: readonly LogLine[], mark: ReturnType<typeof strikeOf>["mark"]): LogLine => {
  const last = log.at(-1)!
  return LogLine.parse({ ...last, id: `mark-${log.length}`, seq: last.seq + 1, ...mark })
}

const afterStrike = (log: readonly LogLine[], from?: number, to?: number): LogLine[] => {
  const { left, mark } = strikeOf(log, from, to)
  return [...log.map((line) => (line.id === left.id ? left : line)), stamped(log, mark)]
}

test("the words are gone from the text, the other readings and the single words, and from the file", () => {
  const struck = afterStrike(lines)
  const heard = struck.find((line) => line.type === "heard" && line.heard.id === "line-2")
  expect(heard).toMatchObject({
    heard: {
      text: "[struck] supply neutral twenty five square",
      alternatives: [],
      words: ["supply", "neutral", "twenty", "five", "square"].map((text) => expect.objectContaining({ text })),
    },
  })
  expect(writeJobFile(struck)).not.toMatch(/daughter|doctor/)
  expect(strikeOf(lines).sound).toEqual({ heard: "line-2", start: 0, end: 3.9 })
})

test("a file saved after the strike reads as whole, and its chain is that of a file saved before", () => {
  const struck = afterStrike(lines)
  expect(readJobFile(writeJobFile(struck))).toMatchObject({ ok: true, value: { faults: [], struck: 1, lines: struck } })
  expect(chainOf(struck).slice(0, lines.length)).toEqual(chainOf(lines))
})

test("a second strike in the same sentence keeps the first link", () => {
  const once = afterStrike(lines)
  const twice = afterStrike(once, 9, 15)
  expect(
    twice.flatMap((line) => (line.type === "heard" && line.heard.id === "line-2" ? [line.heard.text] : [])),
  ).toEqual(["[struck] [struck] neutral twenty five square"])
  expect(readJobFile(writeJobFile(twice))).toMatchObject({ ok: true, value: { faults: [], struck: 1 } })
  expect(chainOf(twice).slice(0, lines.length)).toEqual(chainOf(lines))
})

test("a line before a struck one cannot be changed under it, nor can what is left of it", () => {
  const file = writeJobFile(afterStrike(lines))
  const before = readJobFile(file.replace('"text":"p m e"', '"text":"t t"'))
  expect(before.ok && before.value.faults).toEqual(["Line 4 was changed, or one before it is missing."])
  const left = readJobFile(file.replace("[struck] supply neutral", "[struck] supply  neutral"))
  expect(left.ok && left.value.faults).toEqual([expect.stringContaining("is not what the mark says")])
})

test("a change before a struck line is noticed even when its own link is made to fit", () => {
  const changed = lines.map(
    (line): LogLine => (line.type === "heard" && line.heard.id === "line-1" ? { ...line, by: "somebody" } : line),
  )
  const struck = afterStrike(lines)
  const forged = [...changed.slice(0, 5), ...struck.slice(5)]
  const faults = readJobFile(writeJobFile(forged))
  expect(faults.ok && faults.value.faults.length).toBe(1)
})

test("a signature over another record is noticed", () => {
  const last = lines.at(-1)!
  const signature = { ...last, id: "sign", seq: last.seq + 1, type: "signed_off", role: "worker" } as const
  const sign = (over: string) => readJobFile(writeJobFile([...lines, { ...signature, over } as LogLine]))
  expect(sign(chainOf(lines).at(-1)!)).toMatchObject({ ok: true, value: { faults: [] } })
  expect(sign("0".repeat(64))).toMatchObject({
    ok: true,
    value: { faults: [expect.stringContaining("signs another record")] },
  })
})

test("what is not there cannot be struck", () => {
  expect(strike(lines, { of: "nobody", from: 0, to: 1, because: "x" }).ok).toBe(false)
  expect(strike(lines, { of: lineOf("line-2"), from: 5, to: 5, because: "x" }).ok).toBe(false)
  expect(strike(lines, { of: lineOf("line-2"), from: 0, to: 5000, because: "x" }).ok).toBe(false)
})

test("places that repeat the words are found and can be struck as well", () => {
  const [repeat, ...more] = repeatsOf(lines, lineOf("line-2"), "neutral twenty five")
  expect(more).toEqual([])
  const struck = strike(lines, { ...repeat!, because: "private" })
  expect(struck).toMatchObject({
    ok: true,
    value: { left: { type: "said", words: "Supply [struck] square." }, sound: null },
  })
  expect(repeatsOf(lines, lineOf("line-2"), secret)).toEqual([])
})

test("words are struck out of a note, and never out of a measured value", () => {
  const measured = lines.find((line) => line.type === "entry" && line.fact.kind === "neutral_csa")!
  expect(strike(lines, { of: measured.id, from: 0, to: 1, because: "x" }).ok).toBe(false)
  const fact = { kind: "note", value: `gate code and ${secret}` } as const
  const note = LogLine.parse({ ...measured, id: "note", seq: 200, fact })
  const struck = strike([...lines, note], { of: "note", from: 14, to: fact.value.length, because: "private" })
  expect(struck).toMatchObject({ ok: true, value: { left: { fact: { value: "gate code and [struck]" } } } })
})

test("a file that is read and written again is the same, byte for byte", () => {
  expect(writeJobFile(bakery.value.lines)).toBe(readFileSync("samples/bakery.bothhands.jsonl", "utf8"))
})
