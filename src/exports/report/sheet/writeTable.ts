/**
 * A table that may run over pages: its heads are drawn again on each, and a row that is too tall for what is left of a
 * page goes on overleaf instead of being cut. Only the first drawing of the heads is read aloud.
 */
import type { Block, Cell } from "../Report"
import { bandHeight, drawBand } from "./drawBand"
import { drawShape } from "./drawShape"
import { lineHeight, look, styles } from "./look"
import type { Element, Line, Sheet } from "./Sheet"

type Table = Extract<Block, { kind: "table" }>

const pad = { across: 4, down: 3.2 }
const markSize = 7
const markRoom = 11
/** Fewer lines than this are not left alone at the foot of a page. */
const fewestLines = 3

interface LaidCell {
  cell: Cell
  lines: Line[]
  element: Element
  tag: "TH" | "TD"
  x: number
  width: number
}

const heightOf = (lines: readonly Line[]) => lines.reduce((sum, line) => sum + lineHeight(line.style), 0)
const cellHeight = ({ lines, cell }: LaidCell) => (cell.band ? bandHeight : heightOf(lines))

const columnsOf = ({ shares }: Table, sheet: Sheet) => {
  const total = shares.reduce((sum, share) => sum + share, 0)
  let x = sheet.left
  return shares.map((share) => {
    const column = { x, width: (share / total) * sheet.width }
    x += column.width
    return column
  })
}

const layCell = (
  cell: Cell,
  at: number,
  column: { x: number; width: number },
  sheet: Sheet,
): Omit<LaidCell, "element"> => {
  const room = column.width - 2 * pad.across - (cell.mark ? markRoom : 0)
  const style = at === 0 ? styles.rowHead : styles.cell
  const under = cell.under ? sheet.wrap(cell.under, styles.under, room) : []
  const text = under.length > 0 ? `${cell.text} ` : cell.text
  const lines = cell.text === "" && cell.band ? [] : [...sheet.wrap(text, style, room), ...under]
  return { cell, lines, tag: at === 0 ? "TH" : "TD", ...column }
}

const scoped = (sheet: Sheet, tag: "TH" | "TD", scope: "Row" | "Column"): Element =>
  sheet.doc.struct(tag, (tag === "TH" ? { scope } : {}) as PDFKit.Mixins.StructureElementOptions)

const drawHeads = (sheet: Sheet, table: Table, columns: ReturnType<typeof columnsOf>, element: Element | null) => {
  const heads = table.heads.map((head, at) => sheet.wrap(head, styles.head, columns[at]!.width - 2 * pad.across))
  const height = Math.max(...heads.map(heightOf)) + 2 * pad.down
  sheet.decorate(() => sheet.doc.rect(sheet.left, sheet.y, sheet.width, height).fill(look.panel))
  const row = element && sheet.doc.struct("TR")
  for (const [at, lines] of heads.entries()) {
    const place = { x: columns[at]!.x + pad.across, y: sheet.y + pad.down }
    if (row) {
      const head = scoped(sheet, "TH", "Column")
      row.add(head)
      sheet.put(head, "TH", lines, place)
    } else {
      sheet.decorate(() => {
        for (const [down, line] of lines.entries()) sheet.write(line, place.x, place.y + down * lineHeight(line.style))
      })
    }
  }
  if (row) element.add(row)
  sheet.y += height
}

/** How many of a cell's lines fit into a height. */
const fitting = (lines: readonly Line[], height: number): number => {
  let used = 0
  const last = lines.findIndex((line) => {
    used += lineHeight(line.style)
    return used > height
  })
  return last < 0 ? lines.length : last
}

const drawPart = (sheet: Sheet, cells: readonly LaidCell[], height: number, isFirst: boolean) => {
  for (const laid of cells) {
    const { cell, element, tag, x, width } = laid
    const top = sheet.y + pad.down
    const { band, mark } = cell
    if (mark && isFirst) sheet.decorate(() => drawShape(sheet.doc, mark, x + pad.across, top + 1.6, markSize))
    if (band && isFirst) {
      const figure = sheet.doc.struct("Figure", { alt: band.alt })
      element.add(figure)
      sheet.picture(figure, "Figure", () => drawBand(sheet.doc, band, x + pad.across, top, width - 2 * pad.across))
    }
    const lines = laid.lines.splice(0, fitting(laid.lines, height))
    if (lines.length > 0) sheet.put(element, tag, lines, { x: x + pad.across + (mark ? markRoom : 0), y: top })
  }
  sheet.y += height + 2 * pad.down
  sheet.decorate(() => {
    sheet.doc
      .lineWidth(0.5)
      .moveTo(sheet.left, sheet.y)
      .lineTo(sheet.left + sheet.width, sheet.y)
      .stroke(look.faint)
  })
}

const tallest = (cells: readonly LaidCell[]) => Math.max(...cells.map(cellHeight))

const writeRow = (sheet: Sheet, cells: readonly LaidCell[], turnPage: () => void) => {
  const page = look.page.height - look.page.top - look.page.bottom - 60
  const least = fewestLines * lineHeight(styles.cell)
  const room = () => sheet.bottom - sheet.y - 2 * pad.down
  const whole = tallest(cells)
  if (whole > room() && (whole <= page / 3 || room() < least)) turnPage()
  let isFirst = true
  for (;;) {
    const left = Math.max(tallest(cells), isFirst && cells.some(({ cell }) => cell.band) ? bandHeight : 0)
    const height = Math.min(left, room())
    drawPart(sheet, cells, height, isFirst)
    isFirst = false
    if (cells.every(({ lines }) => lines.length === 0)) return
    turnPage()
  }
}

/** Writes a table below what stands there. */
export const writeTable = (sheet: Sheet, parent: Element, table: Table): void => {
  const columns = columnsOf(table, sheet)
  const element = sheet.doc.struct("Table")
  parent.add(element)
  sheet.need(60)
  drawHeads(sheet, table, columns, element)
  for (const row of table.rows) {
    const rowElement = sheet.doc.struct("TR")
    element.add(rowElement)
    const cells = row.map((cell, at): LaidCell => {
      const laid = layCell(cell, at, columns[at]!, sheet)
      const own = scoped(sheet, laid.tag, "Row")
      rowElement.add(own)
      return { ...laid, element: own }
    })
    writeRow(sheet, cells, () => {
      sheet.need(Number.POSITIVE_INFINITY)
      drawHeads(sheet, table, columns, null)
    })
  }
  sheet.y += 8
}
