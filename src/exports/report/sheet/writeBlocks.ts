/** Writes a report's blocks one below the other, each with the tag that says what it is. */
import type { Block, Report } from "../Report"
import { drawArrangement } from "./drawArrangement"
import { drawShape } from "./drawShape"
import { lineHeight, look, styles } from "./look"
import type { Element, Line, Sheet } from "./Sheet"
import { notShownWords } from "./shownText"
import { writeTable } from "./writeTable"

const before = { 1: 0, 2: 12, 3: 7 } as const
const after = { 1: 6, 2: 4, 3: 3 } as const
/** A heading is not left alone at the foot of a page. */
const company = { 1: 120, 2: 90, 3: 70 } as const

/** Lines of one element, over as many pages as they need. */
const writeLines = (sheet: Sheet, element: Element, tag: string, lines: readonly Line[], x: number): void => {
  const rest = [...lines]
  while (rest.length > 0) {
    sheet.need(lineHeight(rest[0]!.style))
    const room = Math.max(1, Math.floor((sheet.bottom - sheet.y) / lineHeight(rest[0]!.style)))
    const part = rest.splice(0, room)
    sheet.put(element, tag, part, { x, y: sheet.y })
    sheet.y += part.reduce((sum, { style }) => sum + lineHeight(style), 0)
  }
}

const writeHeading = (sheet: Sheet, parent: Element, { level, text, mark }: Extract<Block, { kind: "heading" }>) => {
  const style = styles[`h${level}`]
  const lines = sheet.wrap(text, style, sheet.width - 14)
  if (!sheet.need(before[level] + company[level])) sheet.y += before[level]
  if (level < 3) sheet.doc.outline.addItem(lines.map((line) => line.text).join(" "))
  if (mark) sheet.decorate(() => drawShape(sheet.doc, mark, sheet.left, sheet.y + 2.5, 8))
  const element = sheet.doc.struct(`H${level}`)
  parent.add(element)
  writeLines(sheet, element, `H${level}`, lines, sheet.left + (mark ? 13 : 0))
  sheet.y += after[level]
}

const writeText = (sheet: Sheet, parent: Element, { text, tone, mark }: Extract<Block, { kind: "text" }>) => {
  const style = tone === undefined ? styles.text : styles[tone]
  sheet.need(lineHeight(style) * 2)
  if (mark) sheet.decorate(() => drawShape(sheet.doc, mark, sheet.left, sheet.y + 1.8, 8))
  const element = sheet.doc.struct("P")
  parent.add(element)
  const inset = mark ? 14 : 0
  writeLines(sheet, element, "P", sheet.wrap(text, style, sheet.width - inset), sheet.left + inset)
  sheet.y += 3
}

const writeList = (sheet: Sheet, parent: Element, { items }: Extract<Block, { kind: "list" }>) => {
  const list = sheet.doc.struct("L")
  parent.add(list)
  for (const text of items) {
    sheet.need(lineHeight(styles.text) * 2)
    const item = sheet.doc.struct("LI")
    const body = sheet.doc.struct("LBody")
    item.add(body)
    list.add(item)
    sheet.decorate(() => sheet.doc.circle(sheet.left + 4, sheet.y + 6, 1.6).fill(look.quiet))
    writeLines(sheet, body, "LBody", sheet.wrap(text, styles.text, sheet.width - 14), sheet.left + 14)
    sheet.y += 2
  }
  sheet.y += 3
}

const signatureFields = [
  { name: "Name", share: 0.4 },
  { name: "Signature", share: 0.38 },
  { name: "Date", share: 0.22 },
]

const writeSignatures = (sheet: Sheet, parent: Element, { roles }: Extract<Block, { kind: "signatures" }>) => {
  for (const role of roles) {
    const lines = sheet.wrap(role, styles.h3, sheet.width)
    sheet.need(lines.length * lineHeight(styles.h3) + 52)
    const element = sheet.doc.struct("P")
    parent.add(element)
    writeLines(sheet, element, "P", lines, sheet.left)
    const base = sheet.y + 32
    let x = sheet.left
    for (const { name, share } of signatureFields) {
      const width = share * sheet.width
      const from = x
      sheet.decorate(() =>
        sheet.doc
          .lineWidth(0.8)
          .moveTo(from, base)
          .lineTo(from + width - 14, base)
          .stroke(look.ink),
      )
      const field = sheet.doc.struct("P")
      parent.add(field)
      sheet.put(field, "P", [{ text: name, style: styles.under }], { x: from, y: base + 2 })
      x += width
    }
    sheet.y = base + 24
  }
}

const writeBlock = (sheet: Sheet, parent: Element, block: Block): void => {
  switch (block.kind) {
    case "heading":
      return writeHeading(sheet, parent, block)
    case "text":
      return writeText(sheet, parent, block)
    case "list":
      return writeList(sheet, parent, block)
    case "table":
      return writeTable(sheet, parent, block)
    case "arrangement":
      return drawArrangement(sheet, parent, block.drawn)
    case "signatures":
      return writeSignatures(sheet, parent, block)
  }
}

/** The foot of every page: the report's own line and the page's number. Readers pass over it. */
const writeFeet = (sheet: Sheet, foot: string) => {
  const { doc, left, width } = sheet
  const { start, count } = doc.bufferedPageRange()
  const line = sheet.wrap(foot, styles.under, width - 90)[0]!
  for (let page = start; page < start + count; page++) {
    doc.switchToPage(page)
    const y = look.page.height - look.page.bottom + 16
    doc.markContent("Artifact", { type: "Pagination" })
    doc
      .lineWidth(0.5)
      .moveTo(left, y - 5)
      .lineTo(left + width, y - 5)
      .stroke(look.edge)
    sheet.write(line, left, y)
    const number = `page ${page - start + 1} of ${count}`
    sheet.write({ text: number, style: styles.under }, left + width - doc.widthOfString(number), y)
    doc.endMarkedContent()
  }
}

/** Writes all of it, and at the end which signs could not be shown. */
export const writeBlocks = (sheet: Sheet, { blocks, foot }: Report): void => {
  const root = sheet.doc.struct("Document")
  for (const block of blocks) writeBlock(sheet, root, block)
  const words = notShownWords(sheet.notShown)
  if (words !== "") {
    writeBlock(sheet, root, { kind: "heading", level: 2, text: "Signs that could not be shown" })
    writeBlock(sheet, root, { kind: "text", text: words })
  }
  sheet.doc.addStructure(root)
  root.end()
  writeFeet(sheet, foot)
}
