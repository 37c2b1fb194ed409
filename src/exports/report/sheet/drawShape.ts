/** Small marks that differ in outline, so that they are told apart without colour. Words always stand beside them. */
import type { Shape } from "../Report"
import { look } from "./look"

type Doc = PDFKit.PDFDocument
type Draw = (doc: Doc, x: number, y: number, size: number) => void

const polygon = (doc: Doc, x: number, y: number, size: number, corners: readonly (readonly [number, number])[]) =>
  doc.polygon(...corners.map(([across, down]): [number, number] => [x + across * size, y + down * size]))

const circle = (doc: Doc, x: number, y: number, size: number) => doc.circle(x + size / 2, y + size / 2, size / 2 - 0.4)

const bang = (doc: Doc, x: number, y: number, size: number, [from, to]: readonly [number, number]) => {
  doc.lineWidth(size * 0.13).strokeColor(look.white)
  doc.moveTo(x + size / 2, y + from * size).lineTo(x + size / 2, y + (to - 0.2) * size)
  doc
    .moveTo(x + size / 2, y + (to - 0.08) * size)
    .lineTo(x + size / 2, y + to * size)
    .stroke()
}

const tick: Draw = (doc, x, y, size) => {
  doc.lineWidth(size * 0.17).strokeColor(look.go)
  doc.moveTo(x + 0.1 * size, y + 0.55 * size).lineTo(x + 0.38 * size, y + 0.84 * size)
  doc.lineTo(x + 0.92 * size, y + 0.16 * size).stroke()
}

const shapes: Record<Shape, Draw> = {
  stop(doc, x, y, size) {
    const [a, b] = [0.29, 0.71]
    polygon(doc, x, y, size, [
      [a, 0],
      [b, 0],
      [1, a],
      [1, b],
      [b, 1],
      [a, 1],
      [0, b],
      [0, a],
    ]).fill(look.stop)
    bang(doc, x, y, size, [0.2, 0.82])
  },
  warn(doc, x, y, size) {
    polygon(doc, x, y, size, [
      [0.5, 0],
      [1, 1],
      [0, 1],
    ]).fill(look.wait)
    bang(doc, x, y, size, [0.32, 0.92])
  },
  note(doc, x, y, size) {
    polygon(doc, x, y, size, [
      [0.1, 0.05],
      [0.9, 0.05],
      [0.9, 0.95],
      [0.1, 0.95],
    ])
      .lineWidth(0.8)
      .stroke(look.quiet)
    doc.lineWidth(0.7)
    for (const at of [0.3, 0.5, 0.7]) doc.moveTo(x + 0.25 * size, y + at * size).lineTo(x + 0.75 * size, y + at * size)
    doc.stroke(look.quiet)
  },
  fits: tick,
  yes: tick,
  unchallenged(doc, x, y, size) {
    circle(doc, x, y, size).lineWidth(1).stroke(look.quiet)
  },
  waiting(doc, x, y, size) {
    circle(doc, x, y, size).lineWidth(1).dash(1.4, { space: 1.2 }).stroke(look.wait)
    doc.undash().lineWidth(1)
    doc.moveTo(x + size / 2, y + 0.24 * size).lineTo(x + size / 2, y + 0.54 * size)
    doc.lineTo(x + 0.72 * size, y + 0.62 * size).stroke(look.wait)
  },
  kept(doc, x, y, size) {
    doc
      .lineWidth(1)
      .moveTo(x + 0.2 * size, y)
      .lineTo(x + 0.2 * size, y + size)
      .stroke(look.wait)
    polygon(doc, x, y, size, [
      [0.2, 0],
      [0.95, 0.25],
      [0.2, 0.55],
    ]).fill(look.wait)
  },
  gone(doc, x, y, size) {
    doc
      .lineWidth(size * 0.14)
      .moveTo(x + 0.15 * size, y + 0.15 * size)
      .lineTo(x + 0.85 * size, y + 0.85 * size)
    doc
      .moveTo(x + 0.85 * size, y + 0.15 * size)
      .lineTo(x + 0.15 * size, y + 0.85 * size)
      .stroke(look.quiet)
  },
  bare(doc, x, y, size) {
    doc
      .lineWidth(1.2)
      .moveTo(x + 0.1 * size, y + size / 2)
      .lineTo(x + 0.9 * size, y + size / 2)
      .stroke(look.quiet)
  },
}

/** Draws a shape in a square whose top left corner is given. */
export const drawShape = (doc: Doc, shape: Shape, x: number, y: number, size: number): void =>
  shapes[shape](doc, x, y, size)
