/**
 * Finds every number in a row of atoms and reads it, or says why it cannot be read. Numbers that touch without a word
 * or a comma between them are one doubtful number: an engine may have torn or joined them, and half of a torn number
 * must never stand as a value ("ten five metres" is not five metres).
 */

import { type AtomRow, reading, takeDigits, touches } from "./AtomRow"
import type { NumberReading } from "./NumberReading"
import type { Atom } from "./readAtoms"
import { readCardinal } from "./readCardinal"
import { readDecimals } from "./readDecimals"
import { lostPoint, readFigure } from "./readFigure"
import { isEdgeGap } from "./Token"

/** All numbers in order, never overlapping. */
export function readNumbers(row: AtomRow): NumberReading[] {
  const readings: NumberReading[] = []
  for (let at = 0; at < row.atoms.length; ) {
    const first = readNumberAt(row, at)
    if (!first || first.to <= at) {
      at += 1
      continue
    }
    const group = [first]
    while (touches(row, group.at(-1)!.to)) {
      const next = readNumberAt(row, group.at(-1)!.to)
      if (!next || next.to <= next.from) break
      group.push(next)
    }
    for (const one of settleGroup(group, row)) readings.push(markDoubtfulWords(one, row))
    at = group.at(-1)!.to
  }
  return readings
}

function settleGroup(group: readonly NumberReading[], row: AtomRow): readonly NumberReading[] {
  if (group.length === 1) return group
  const [first, second] = group
  if (!second || !first) return group
  const isRepeat = first.places > 0 || (first.spoken && first.value >= 10)
  if (isRepeat && group.every((one) => !one.doubt && one.text === first.text))
    return [{ ...first, to: group.at(-1)!.to }]
  // "in 16 14 metres": figures apart, the first one named as a size.
  const isNamed = row.words[first.from - 1] === "in" && group.length === 2
  if (isNamed && group.every((one) => !one.spoken && !one.doubt) && first.value > 9) return group
  const candidates = group.flatMap((one) => one.doubt?.candidates ?? [one.value])
  const to = group.at(-1)!.to
  return [
    reading(first.from, to, first.text, { shape: "none", doubt: { candidates, because: "two numbers ran together" } }),
  ]
}

function markDoubtfulWords(one: NumberReading, row: AtomRow): NumberReading {
  const before = one.from > 0 ? row.words[one.from - 1]! : ""
  if ((before === "minus" || before === "negative") && touches(row, one.from))
    return { ...one, doubt: { candidates: [], because: "a minus cannot be meant" } }
  if (one.doubt) return one
  let isDoubtful = false
  for (let at = one.from; at < one.to; at += 1) isDoubtful ||= row.atoms[at]?.isDoubtful ?? false
  if (!isDoubtful) return one
  return { ...one, doubt: { candidates: [one.value], because: "a word may not have been a number" } }
}

function readNumberAt(row: AtomRow, at: number): NumberReading | null {
  const atom = row.atoms[at]
  if (!atom) return null
  switch (atom.role) {
    case "zero":
    case "softZero":
      return readFromZero(row, at)
    case "point":
      return readDecimals(row, at, at, "")
    case "figure":
      return readFromFigure(row, at)
    case "fraction":
    case "half":
      return readHalf(row, at, atom)
    case "quarter":
      return row.words[at] === "quarter" ? reading(at, atom.to, "0.25", { shape: "fraction" }) : null
    case "stub":
      return readStub(row, at)
    case "tail":
    case "times":
      return null
    default:
      return readFromCardinal(row, at)
  }
}

/** A half by itself; "… and a half" behind a word that is no number has lost its whole. */
function readHalf(row: AtomRow, at: number, { role, value, to }: Atom): NumberReading {
  const isBehindAnd = /^(and )?(and a|and an|and one)$/.test(row.words.slice(Math.max(0, at - 2), at).join(" "))
  const isTorn = at > 1 && isBehindAnd && !(at > 2 && isEdgeGap(row.tokens[at - 3]!.after))
  const doubt = isTorn ? { candidates: [], because: "the number before the half was not heard" } : null
  return reading(at, to, String(value), { shape: "fraction", spoken: role === "half", doubt })
}

/** "nought point …", "nought 0.05", "nought nought five", or a nought by itself. */
function readFromZero(row: AtomRow, at: number): NumberReading | null {
  const next = touches(row, at + 1) ? row.atoms[at + 1] : null
  if (next?.role === "point") return readDecimals(row, at, at + 1, "0")
  if (next?.role === "figure" && /^0?[.,]\d/.test(next.text)) {
    const merged = readFromFigure(row, at + 1)
    return merged && { ...merged, from: at, lead: "nought", spoken: true }
  }
  const { text, end } = takeDigits(row, at)
  if (text.length > 1) {
    const candidates = lostPoint(text).filter((value) => value < 1)
    return reading(at, end, "0", { shape: "none", doubt: { candidates, because: "the point was not heard" } })
  }
  if (row.atoms[at]!.role === "softZero") return readBrokenOh(row, at)
  return reading(at, at + 1, "0", { lead: "nought" })
}

/** "oh. Oh, five." is two interjections or two digits; a lone "oh" is nothing. */
function readBrokenOh(row: AtomRow, at: number): NumberReading | null {
  let end = at + 1
  while (row.atoms[end]?.role === "softZero") end += 1
  const last = row.atoms[end]
  if (last?.role !== "digit" || row.tokens[end - 1]?.after === "space") return null
  const candidates = [Number(`0.0${last.value}`)]
  return reading(at, end + 1, "0", { shape: "none", doubt: { candidates, because: "the point was not heard" } })
}

function readFromFigure(row: AtomRow, at: number): NumberReading | null {
  const atom = row.atoms[at]!
  const split = row.atoms[at + 1] ? readSplitFigure(row, at) : null
  if (split) return split
  const next = touches(row, at + 1) ? row.atoms[at + 1] : null
  if (
    /^\d+$/.test(atom.text) &&
    next &&
    ["hundred", "thousand", "point", "tail", "half", "fraction"].includes(next.role)
  )
    return readFromCardinal(row, at)
  if (/^\d$/.test(atom.text) && next) {
    const { text, end } = takeDigits(row, at)
    if (text.startsWith("0") && text.length > 1)
      return reading(at, end, "0", {
        shape: "none",
        spoken: false,
        doubt: { candidates: lostPoint(text).filter((value) => value < 1), because: "the point was not heard" },
      })
  }
  const torn = readGluedDigits(row, at)
  if (torn) return torn
  const { text, shape, lead, hasThousandsComma, doubt } = readFigure(atom.text)
  const whole = reading(at, atom.to, text, { shape, lead, hasThousandsComma, doubt, spoken: false })
  return readFromHalf(row, whole)
}

/** "0.0four": an engine turned half of a decimal into figures, and the digits in words are glued to it. */
function readGluedDigits(row: AtomRow, at: number): NumberReading | null {
  const { text, to } = row.atoms[at]!
  if (!/^\d+\.\d+$/.test(text) || row.tokens[to - 1]!.after !== "none") return null
  let end = to
  let digits = ""
  for (let next = row.atoms[end]; next && /^(digit|zero|softZero)$/.test(next.role); next = row.atoms[end]) {
    digits += String(next.value)
    end = next.to
    if (row.tokens[end - 1]!.after !== "none") break
  }
  if (digits === "") return null
  const figure = readFigure(text + digits)
  return reading(at, end, figure.text, { ...figure, spoken: false })
}

/** "0 .05", "0. 05" and "0.0 5" are one number that a space got into. */
function readSplitFigure(row: AtomRow, at: number): NumberReading | null {
  const text = row.atoms[at]!.text
  const next = row.atoms[at + 1]
  const isWholeAndPoint = /^\d{1,3}$/.test(text) && next?.role === "figure" && /^\.\d+$/.test(next.text)
  if (next?.role !== "figure" || !(isWholeAndPoint || /^(0|\.0|0\.0)$/.test(text))) return null
  const gap = row.tokens[at]!.after
  const joined = `${text}${gap === "stop" ? "." : ""}${next.text}`
  const isWhole =
    gap === "space" ? /^\d*\.\d+$/.test(joined) : gap === "stop" && text === "0" && /^0\.\d{2,}$/.test(joined)
  if (!isWhole) return null
  const figure = readFigure(joined)
  return reading(at, next.to, figure.text, { ...figure, spoken: false, isSplit: text.includes(".") })
}

function readFromCardinal(row: AtomRow, at: number): NumberReading | null {
  const cardinal = readCardinal(row, at)
  if (!cardinal) return null
  const next = touches(row, cardinal.to) ? row.atoms[cardinal.to] : null
  if (next?.role === "point") return readDecimals(row, at, cardinal.to, cardinal.text)
  if (next?.role === "quarter" && cardinal.value <= 3 && cardinal.value !== 2)
    return reading(at, next.to, String(cardinal.value * 0.25), { shape: "fraction" })
  if (next?.role === "tail" && cardinal.value < 100) return readWithTail(cardinal, next)
  return readFromHalf(row, cardinal)
}

/** "six and a half", "six and three quarters", "12½". */
function readFromHalf(row: AtomRow, whole: NumberReading): NumberReading {
  if (whole.shape !== "whole" || whole.doubt) return whole
  const glued = touches(row, whole.to) ? row.atoms[whole.to] : null
  if (glued?.role === "fraction" || glued?.role === "half") return withFraction(whole, glued.value, glued.to)
  if (glued?.role === "figure" && readFigure(glued.text).shape === "fraction")
    return withFraction(whole, Number(readFigure(glued.text).text), glued.to)
  if (whole.to >= row.words.length || !/^(and|an'?|'?n)$/.test(row.words[whole.to]!)) return whole
  const after = whole.to + (["a", "one"].includes(row.words[whole.to + 1] ?? "") ? 2 : 1)
  const part = row.atoms[after]
  if (part?.role === "half" || part?.role === "quarter" || part?.role === "fraction")
    return withFraction(whole, part.value, part.to)
  const three = row.atoms[whole.to + 1]
  const quarters = row.atoms[whole.to + 2]
  if (three?.value === 3 && quarters?.role === "quarter") return withFraction(whole, 0.75, quarters.to)
  return whole
}

const withFraction = (whole: NumberReading, part: number, to: number): NumberReading =>
  reading(whole.from, to, `${whole.text}${String(part).slice(1)}`, { shape: "fraction", spoken: whole.spoken })

/** "fif" lost its ending: fifteen, fifty or five. */
function readStub(row: AtomRow, at: number): NumberReading {
  const { value, to } = row.atoms[at]!
  const isTorn = row.words[at]!.endsWith("t")
  const candidates = [value + 10, value * 10, ...(isTorn ? [] : [value])]
  return reading(at, to, String(value), {
    shape: "none",
    doubt: { candidates, because: "the end of the number was not heard" },
  })
}

/** "50 teen", "6 tea": the ending fits neither way. */
function readWithTail(head: NumberReading, tail: Atom): NumberReading {
  const base = head.value >= 20 && head.value % 10 === 0 ? head.value / 10 : head.value
  const candidates = /^s?teen/.test(tail.text) ? [base + 10, base * 10] : [base + 10]
  return reading(head.from, tail.to, head.text, {
    shape: "none",
    doubt: { candidates, because: "the end of the number was not heard" },
  })
}
