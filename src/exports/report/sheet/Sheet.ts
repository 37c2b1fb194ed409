/**
 * A document that is being written from top to bottom, with the place where it stands. All text goes through `put`, so
 * that no text is without a tag, and everything that is only drawn is marked as decoration.
 */
import { create, type Font } from "fontkit"
import PDFDocument from "pdfkit"
import { lineHeight, look, type Style } from "./look"
import { type NotShown, shownText } from "./shownText"
import { wrapText } from "./wrapText"

export type Element = PDFKit.PDFStructureElement
type Tagging = { markStructureContent(tag: string): PDFKit.PDFStructureContent }

export interface ReportFonts {
  /** Bytes of a TrueType font that holds Ω, ² and Δ. */
  regular: Uint8Array
  bold: Uint8Array
}

/** A line that is ready to be written. */
export interface Line {
  text: string
  style: Style
}

export interface Sheet {
  doc: PDFKit.PDFDocument
  /** Where the next thing goes, in points from the top of the page. */
  y: number
  left: number
  width: number
  /** Nothing but the foot goes below. */
  bottom: number
  notShown: NotShown
  /** Breaks a text into lines of a width. */
  wrap(text: string, style: Style, width: number): Line[]
  /** Begins a new page where less than `height` is left on this one. True if it did. */
  need(height: number): boolean
  /** Writes lines below each other as one piece of an element. */
  put(element: Element, tag: string, lines: readonly Line[], at: { x: number; y: number }): void
  /** Draws what carries no meaning of its own. */
  decorate(draw: () => void): void
  /** Draws, with text by `write`, as one piece of an element. */
  picture(element: Element, tag: string, draw: () => void): void
  /** Text within a picture. */
  write(line: Line, x: number, y: number): void
}

export interface SheetOrder {
  fonts: ReportFonts
  title: string
  madeAt: Date
}

const openFont = (bytes: Uint8Array): Font => {
  const font = create(bytes as Buffer)
  if (font.type === "TTC" || font.type === "DFont") throw new Error("A report takes a single font, not a collection.")
  return font as Font
}

/** No font is named at first: pdfkit would take its own, and would not know the same one again by another name. */
const openDocument = ({ title, madeAt }: SheetOrder) =>
  new PDFDocument({
    size: [look.page.width, look.page.height],
    margin: 0,
    pdfVersion: "1.7",
    tagged: true,
    displayTitle: true,
    lang: "en-GB",
    bufferPages: true,
    font: "",
    info: { Title: title, Producer: "Bothhands", Creator: "Bothhands", CreationDate: madeAt, ModDate: madeAt },
  })

/** Opens an empty document. Throws when the fonts are none. */
export const openSheet = (order: SheetOrder): Sheet => {
  const fonts = { regular: openFont(order.fonts.regular), bold: openFont(order.fonts.bold) }
  const doc = openDocument(order)
  const tagging = doc as unknown as Tagging
  for (const name of ["regular", "bold"] as const) doc.registerFont(name, fonts[name] as unknown as string)
  const notShown: NotShown = new Map()
  const has = (code: number) => fonts.regular.hasGlyphForCodePoint(code) && fonts.bold.hasGlyphForCodePoint(code)
  const known = new Map<string, number>()

  const take = ({ bold, size, colour }: Style) => {
    doc
      .font(bold ? "bold" : "regular")
      .fontSize(size)
      .fillColor(colour)
  }
  const measure = (text: string, style: Style): number => {
    const key = `${style.bold ? "b" : "r"}${style.size} ${text}`
    const found = known.get(key)
    if (found !== undefined) return found
    take(style)
    const width = doc.widthOfString(text)
    known.set(key, width)
    return width
  }
  const write = ({ text, style }: Line, x: number, y: number) => {
    take(style)
    doc.text(text, x, y, { lineBreak: false })
  }
  const marked = (element: Element, tag: string, draw: () => void) => {
    const content = tagging.markStructureContent(tag)
    draw()
    doc.endMarkedContent()
    element.add(content)
  }

  const sheet: Sheet = {
    doc,
    y: look.page.top,
    left: look.page.side,
    width: look.page.width - 2 * look.page.side,
    bottom: look.page.height - look.page.bottom,
    notShown,
    wrap: (text, style, width) =>
      wrapText(shownText(text, has, notShown), width, (piece) => measure(piece, style)).map((line) => ({
        text: line,
        style,
      })),
    need(height) {
      if (sheet.y + height <= sheet.bottom) return false
      doc.addPage()
      sheet.y = look.page.top
      return true
    },
    put: (element, tag, lines, { x, y }) =>
      marked(element, tag, () => {
        let top = y
        for (const line of lines) {
          write(line, x, top)
          top += lineHeight(line.style)
        }
      }),
    decorate(draw) {
      doc.markContent("Artifact", { type: "Layout" })
      draw()
      doc.endMarkedContent()
    },
    picture: marked,
    // The space is not seen, and keeps the pieces of a picture's text apart for those who copy them.
    write: (line, x, y) => write({ ...line, text: `${line.text} ` }, x, y),
  }
  return sheet
}
