/**
 * The PDF report as pdf.js reads it: every value of the record once in its place with its unit, tags, and jobs that are
 * empty, damaged, huge or full of texts that no font holds.
 */
import { readFileSync } from "node:fs"
import { createRequire } from "node:module"
import fc from "fast-check"
import { expect, test, vi } from "vitest"
import type { ExportedJob } from "../../src/exports/ExportedJob"
import { recordPdf } from "../../src/exports/recordPdf"
import { itemName } from "../../src/exports/report/quantity"
import { notShownWords, shownText } from "../../src/exports/report/sheet/shownText"
import { wrapText } from "../../src/exports/report/sheet/wrapText"
import type { RecordedFact } from "../../src/facts/Fact"
import { writeJobFile } from "../../src/record/jobFile"
import type { Draft, LogLine } from "../../src/record/LogLine"
import { warningKey } from "../../src/record/warningKey"
import { bakeryRecord } from "../bakery"
import { entry, opened, stampLines, waterReading, waterSize } from "../record/someLines"
import { bakeryText, jobOf } from "./bakeryJob"
import { type ReadPdf, readPdf } from "./readPdf"

const fontNamed = (name: string) =>
  new Uint8Array(readFileSync(createRequire(import.meta.url).resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`)))
const fonts = { regular: fontNamed("DejaVuSansCondensed"), bold: fontNamed("DejaVuSansCondensed-Bold") }
const madeAt = "2026-03-03T08:00:00+00:00"

vi.setConfig({ testTimeout: 60_000 })

const write = (job: ExportedJob) => recordPdf(job, { fonts, madeAt })
const read = async (job: ExportedJob) => readPdf(await write(job))
const ofLines = (lines: readonly LogLine[]) => jobOf(writeJobFile(lines))
const fromDrafts = (drafts: readonly Draft[]) => ofLines(stampLines([opened, ...drafts]))

const bakery = read(jobOf(bakeryText))

const rowsUnder = ({ blocks }: ReadPdf, title: string) =>
  blocks.filter(({ role, under }) => role === "TR" && under.startsWith(title)).map(({ cells }) => cells)
const textUnder = ({ blocks }: ReadPdf, title: string) =>
  blocks.filter(({ role, under }) => role !== "TR" && under.startsWith(title)).map(({ text }) => text)
const squeeze = (text: string) => text.replaceAll(/\s+/g, "")

test("each value of the sample stands once among the values of its part, with unit and state", async () => {
  const pdf = await bakery
  const items = ["supply", "earthing_conductor", "gas", "water", "test_leads"]
  const found = items.flatMap((item) =>
    rowsUnder(pdf, `${itemName(item)}: `)
      .filter(([what]) => what !== "What")
      .map(([, value, state]) => `${item} ${value}, ${state}`),
  )
  const wanted = bakeryRecord.map((line) => {
    const [, item, , value, state] = /^(\S+) (\S+) (.*), (\S+)$/.exec(line)!
    const words = value!
      .replace("isolated_proved_dead", "isolated and proved dead")
      .replace("connected_to_met", "connected at the main earthing terminal")
      .replace("> 99900", "over range, > 99900")
    return `${item} ${words.replaceAll("_", " ")}, ${state!.replaceAll("_", " ")}`
  })
  expect(found.sort()).toEqual(wanted.sort())
})

test("it is tagged, has a title and a language, numbers its pages, and the picture is told in words", async () => {
  const pdf = await bakery
  expect(pdf).toMatchObject({ lang: "en-GB", marked: true })
  expect(pdf.title).toBe("Record of earthing and bonding work: The bakery with the flat above")
  for (const [at, drawn] of pdf.drawn.entries()) expect(drawn).toContain(`page ${at + 1} of ${pdf.pages}`)
  const figure = pdf.blocks.find(({ role }) => role === "Figure")!
  expect(figure.alt).toContain("Gas, 10 mm², 8 m, clamp distance 400 mm, reads 0.02 Ω: on record.")
  expect(figure.alt).toContain("Water, 10 mm², 26 m, clamp distance 300 mm, reads 0.05 Ω: on record.")
  expect(rowsUnder(pdf, "Readings").filter(([part]) => part?.startsWith("Water"))).toEqual([
    ["Water 10 mm², 26 m", "0.02 to 0.09 Ω about 0.05 Ω", "0.05 Ω", "inside the band", ""],
  ])
  expect(textUnder(pdf, "Cautions").join(" ")).toMatch(/competent person decides and signs/)
  expect(pdf.drawn.join(" ")).not.toMatch(/\bis safe\b/i)
})

test("what was taken back stands among the corrections only, with what stands now", async () => {
  const pdf = await bakery
  const corrected = rowsUnder(pdf, "Corrections").map(([part, was, became]) => `${part}: ${was}: ${became}`)
  expect(corrected).toContain("Water: Conductor size 4 mm²: taken back now 10 mm²")
  expect(corrected).toContain("Water: Resistance 0.01 Ω: taken back now 0.05 Ω")
  expect(rowsUnder(pdf, "Warnings that no longer hold")).toHaveLength(3)
})

test("the same job, letters and moment give the same bytes", async () => {
  const job = jobOf(bakeryText)
  expect(Buffer.from(await write(job)).equals(Buffer.from(await write(job)))).toBe(true)
})

test("a warning that was kept stands with its reason and who kept it, and one that was not stands open", async () => {
  const supply: Draft[] = [
    entry({ kind: "earthing_arrangement", value: "TN-C-S" }),
    entry({ kind: "neutral_csa", value: 25, unit: "mm2" }),
    waterSize(4),
    entry({ kind: "conductor_csa", value: 6, unit: "mm2", subject: "gas" }),
  ]
  const before = fromDrafts(supply)
  const water = before.open.find((finding) => finding.item === "water")!
  const reason = "old bond, being replaced on Thursday"
  const warning = warningKey(water)
  const answer: Draft[] = [
    { type: "said", words: `Warning. ${water.spoken}`, warns: [warning] },
    { type: "kept", warning, reason },
  ]
  const pdf = await read(fromDrafts([...supply, ...answer]))
  expect(rowsUnder(pdf, "Kept as it is")[1]?.[2]).toBe(`${reason} worker, 2 Mar 2026, 09:00 UTC`)
  expect(rowsUnder(pdf, "Open warnings").map(([part]) => part)).toEqual(["Part", "Gas stop"])
  expect(pdf.blocks.some(({ text }) => text === "1 stop open: put right before going on.")).toBe(true)
})

test("an over-range reading, an electrode and a value that waits for a yes are told as such", async () => {
  const pdf = await read(
    fromDrafts([
      entry({ kind: "earthing_arrangement", value: "TT" }),
      entry({ kind: "resistance", value: 180, unit: "ohm", subject: "earth_electrode" }, true),
      waterSize(10),
      entry({ kind: "length", value: 8, unit: "m", subject: "water" }),
      waterReading(null),
    ]),
  )
  const { alt } = pdf.blocks.find(({ role }) => role === "Figure")!
  expect(alt).toContain("Earth electrode, size not said, length not said, reads 180 Ω")
  expect(rowsUnder(pdf, "Water: ").at(-1)?.slice(1, 3)).toEqual(["over range, limit not said", "waiting for a yes"])
  expect(rowsUnder(pdf, "Readings").at(-1)?.[3]).toBe("over range")
  expect(rowsUnder(pdf, "Not said").map((cells) => cells[1])).toContain(
    "Resistance over range, limit not said: waits for a yes",
  )
})

test("what was written after signing is told", async () => {
  const drafts: Draft[] = [
    waterSize(10),
    { type: "signed_off", role: "supervisor", undone: ["the label of the water bond"] },
    { type: "reopened", because: "the pipe was moved" },
    waterSize(16),
  ]
  const pdf = await read(fromDrafts(drafts))
  const told = rowsUnder(pdf, "Signing").map(([, , what, about]) => `${what}: ${about}`)
  expect(told.slice(1)).toEqual([
    "signed off: as supervisor",
    "opened again: the pipe was moved",
    "value added: Water, conductor size 16 mm²",
  ])
})

test("an empty job and a damaged one are reports too, and the damage stands at the top", async () => {
  const empty = await read(fromDrafts([]))
  expect(textUnder(empty, "Values")).toContain("No value stands on the record.")
  const damaged = await read(jobOf(bakeryText.split("\n").toSpliced(15, 2).slice(0, 90).join("\n")))
  const top = textUnder(damaged, "Record of earthing")
  expect(top[0]).toMatch(/damaged or was changed/)
  expect(top).toContain("The file is cut: its end is missing.")
  expect(rowsUnder(damaged, "Supply: ").flat()).toContain("spoken: (an utterance that is not in the file)")
})

test("sixty parts with long notes run over pages, heads again on each, and no word is cut", async () => {
  const note = (item: number): RecordedFact => ({
    kind: "note",
    value: item === 9 ? "x".repeat(2000) : `note ${item} `.padEnd(2000, "the clamp sits behind the panel; "),
    subject: `part_${item}`,
  })
  const parts = [...Array(60).keys()]
  const size = (item: number) => entry({ kind: "conductor_csa", value: 10, unit: "mm2", subject: `part_${item}` })
  const pdf = await read(
    fromDrafts(parts.flatMap((item) => (item % 10 === 9 ? [size(item), entry(note(item))] : [size(item)]))),
  )
  const values = squeeze(pdf.blocks.map(({ cells, text }) => (cells.length > 0 ? (cells[1] ?? "") : text)).join(""))
  for (const item of parts) {
    expect(values).toContain(squeeze(`Part ${item}: on record`))
    if (item % 10 === 9) expect(values).toContain(squeeze(note(item).value as string))
  }
  const inTable = pdf.drawn.filter((page) => /panel|xxx/.test(page))
  expect(inTable.length).toBeGreaterThan(6)
  for (const page of inTable) expect(page).toMatch(/What\s+Value\s+How taken down/)
})

const hostile = fc.oneof(
  fc.constantFrom("漢字", "שלום", "a\u202Eb", "\u0000", "😀 ok", "\uD800", "<script>alert(1)</script>", "(\\)) Tj ET"),
  fc.constantFrom("a\n\n\nb", "x".repeat(200), "e\u0301".repeat(90), "\uFEFF", "ﬁ Ω ² Δ ≤ √", "2 0 obj\nendstream"),
  fc.string({ unit: "binary", minLength: 1, maxLength: 60 }),
)

test("any text is shown sign by sign, with a stand-in where the letters lack one, and that is said", async () => {
  const { create } = await import("fontkit")
  const letters = [fonts.regular, fonts.bold].map((bytes) => create(Buffer.from(bytes)))
  const has = (code: number) =>
    letters.every((font) => "hasGlyphForCodePoint" in font && font.hasGlyphForCodePoint(code))
  const plain = (text: string) => squeeze(text).normalize("NFKC")
  await fc.assert(
    fc.asyncProperty(fc.array(hostile, { minLength: 40, maxLength: 40 }), async (texts) => {
      const notShown = new Map<number, number>()
      const wanted = texts.map((text) => shownText(text, has, notShown))
      const pdf = await read(fromDrafts(texts.map((value) => entry({ kind: "note", value }))))
      const found = rowsUnder(pdf, "The job as a whole").filter(([what]) => what === "Note")
      expect(found.map(([, value]) => plain(value!))).toEqual(wanted.map(plain))
      const last = pdf.blocks.at(-1)!.text
      for (const code of [...notShown.keys()].slice(0, 40))
        expect(last).toContain(`U+${code.toString(16).toUpperCase().padStart(4, "0")}`)
    }),
    { numRuns: 2 },
  )
})

test("lines together are the text, and none is wider than asked for", () => {
  fc.assert(
    fc.property(fc.string({ unit: "grapheme", maxLength: 300 }), fc.integer({ min: 2, max: 40 }), (text, width) => {
      const lines = wrapText(text, width, (piece) => piece.length)
      expect(lines.join("")).toBe(text.replaceAll("\n", " "))
      for (const line of lines) {
        const bare = line.trimEnd()
        expect(bare.length <= width || [...bare.matchAll(/\P{M}\p{M}*|\p{M}+/gu)].length === 1).toBe(true)
      }
    }),
  )
})

test("signs that were not shown are counted and named", () => {
  const notShown = new Map<number, number>()
  expect(shownText("a\u0000漢漢\r\nb\tc", (code) => code < 0x100, notShown)).toBe("a���\nb c")
  expect(notShownWords(notShown)).toMatch(
    /^3 of the signs .* U\+0000, U\+6F22 \(2 times\)\. They are whole in the job file\.$/,
  )
})
