/** One reading beside what was expected: a scale from nought, the band as a box, its middle as a line, the reading as a diamond. */
import type { BandDrawing } from "../Report"
import { look } from "./look"

/** Height of a drawing in points. */
export const bandHeight = 16

/** How far the scale goes: far enough for the band, and for the reading unless it is far off. */
const scaleEnd = ({ high, reading }: BandDrawing): number =>
  Math.max(high * 1.3, Math.min((reading ?? 0) * 1.1, high * 4))

/** Draws into a box of this width. A reading beyond the scale is an arrow at its end. */
export const drawBand = (doc: PDFKit.PDFDocument, band: BandDrawing, x: number, y: number, width: number): void => {
  const end = scaleEnd(band)
  const at = (ohms: number) => x + (ohms / end) * width
  const middle = y + bandHeight / 2
  doc
    .lineWidth(0.8)
    .moveTo(x, middle)
    .lineTo(x + width, middle)
    .stroke(look.edge)
  doc
    .moveTo(x, middle - 4)
    .lineTo(x, middle + 4)
    .stroke(look.edge)
  doc
    .rect(at(band.low), middle - 4.5, at(band.high) - at(band.low), 9)
    .lineWidth(0.8)
    .fillAndStroke(look.faint, look.go)
  doc
    .moveTo(at(band.nominal), middle - 4.5)
    .lineTo(at(band.nominal), middle + 4.5)
    .stroke(look.go)
  const isBeyond = band.reading === null || band.limit === "above" || band.reading > end
  if (isBeyond) {
    doc.polygon([x + width - 6, middle - 4], [x + width, middle], [x + width - 6, middle + 4]).fill(look.stop)
    return
  }
  const reading = at(band.reading!)
  doc
    .polygon([reading, middle - 5], [reading + 3.5, middle], [reading, middle + 5], [reading - 3.5, middle])
    .fill(look.ink)
}
