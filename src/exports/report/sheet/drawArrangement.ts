/**
 * The picture of the earthing arrangement: the supply on top, the conductor down to the terminal, and one bond below the
 * other with its size over the wire, its length under it, its values and state beside it. On paper it may run over pages;
 * the terminal's bar then goes on.
 */
import type { DrawnArrangement, DrawnConductor } from "../Report"
import { drawShape } from "./drawShape"
import { lineHeight, look, type Style, styles } from "./look"
import type { Element, Line, Sheet } from "./Sheet"

const barX = 16
const barWidth = 9
const wireEnd = 168
const textX = 196
const gap = 7

const lineStyle: Style = styles.cell
const nameStyle: Style = styles.rowHead

interface LaidConductor {
  drawn: DrawnConductor
  lines: Line[]
  height: number
}

const linesHeight = (lines: readonly Line[]) => lines.reduce((sum, { style }) => sum + lineHeight(style), 0)

const lay = (sheet: Sheet, drawn: DrawnConductor): LaidConductor => {
  const room = sheet.width - textX - 6
  const lines = [
    ...sheet.wrap(drawn.name, nameStyle, room),
    ...sheet.wrap(drawn.state.words, lineStyle, room - 11),
    ...(drawn.values.length > 0 ? sheet.wrap(drawn.values.join(" · "), lineStyle, room) : []),
  ]
  return { drawn, lines, height: Math.max(linesHeight(lines), 30) + gap }
}

/** Thicker for a bigger conductor, within what can still be drawn. */
const thickness = (csaMm2: number | null) => (csaMm2 === null ? 1.4 : Math.min(5, 1.4 + Math.sqrt(csaMm2) * 0.42))

const drawWire = (
  sheet: Sheet,
  from: readonly [number, number],
  to: readonly [number, number],
  csaMm2: number | null,
) => {
  const { doc } = sheet
  const line = () => doc.moveTo(...(from as [number, number])).lineTo(...(to as [number, number]))
  if (csaMm2 === null) {
    line().lineWidth(1.4).dash(3, { space: 3 }).stroke(look.quiet)
    doc.undash()
    return
  }
  line().lineWidth(thickness(csaMm2)).stroke(look.wire)
  line()
    .lineWidth(thickness(csaMm2) / 2.6)
    .dash(7, { space: 7 })
    .stroke(look.stripe)
  doc.undash()
}

const drawEnd = (sheet: Sheet, x: number, y: number, isElectrode: boolean) => {
  const { doc } = sheet
  if (!isElectrode) {
    doc.circle(x, y, 6).lineWidth(1.4).fillAndStroke(look.white, look.ink)
    doc.circle(x, y, 2.6).lineWidth(1).stroke(look.ink)
    return
  }
  doc.lineWidth(1.6)
  for (const [at, half] of [
    [0, 9],
    [4, 6],
    [8, 3],
  ] as const)
    doc.moveTo(x + at, y - half).lineTo(x + at, y + half)
  doc.stroke(look.ink)
}

const writeBeside = (sheet: Sheet, { drawn, lines }: LaidConductor, top: number) => {
  let y = top
  const x = sheet.left + textX
  const names = lines.filter((line) => line.style === nameStyle).length
  for (const [at, line] of lines.entries()) {
    if (at === names) drawShape(sheet.doc, drawn.state.mark, x, y + 1.8, 7)
    sheet.write(line, at === names ? x + 11 : x, y)
    y += lineHeight(line.style)
  }
}

const centred = (sheet: Sheet, text: string, y: number) => {
  const line = sheet.wrap(text, styles.under, wireEnd - barX - barWidth - 12)[0]!
  sheet.write(line, sheet.left + barX + barWidth + 12, y)
}

const drawBond = (sheet: Sheet, laid: LaidConductor) => {
  const { drawn, height } = laid
  const top = sheet.y
  const y = top + (height - gap) / 2
  const { left } = sheet
  drawWire(sheet, [left + barX + barWidth, y], [left + wireEnd, y], drawn.csaMm2)
  drawEnd(sheet, left + wireEnd + 4, y, drawn.isElectrode)
  centred(sheet, drawn.size ?? "size not said", y - 13)
  centred(sheet, drawn.length ?? "length not said", y + 4)
  writeBeside(sheet, laid, top)
  drawBar(sheet, top, top + height)
  sheet.y = top + height
}

const drawBar = (sheet: Sheet, from: number, to: number) => {
  sheet.doc.rect(sheet.left + barX, from, barWidth, to - from).fill(look.copper)
}

/** The supply's box and the conductor that comes down from it. */
const layTop = (sheet: Sheet, { arrangement, supply, supplyState, conductor }: DrawnArrangement) => {
  const room = sheet.width - 40
  const title = sheet.wrap(`Supply: ${arrangement ?? "earthing arrangement not said"}`, styles.h3, room)
  const state = sheet.wrap(supplyState.words, lineStyle, room)
  const rest = supply.length > 0 ? sheet.wrap(supply.join(" · "), lineStyle, room) : []
  const boxHeight = linesHeight([...title, ...state, ...rest]) + 12
  const laid = lay(sheet, conductor)
  return { title, state, rest, boxHeight, laid, height: boxHeight + laid.height + 8 + 18 }
}

const drawTop = (sheet: Sheet, drawn: DrawnArrangement, top: ReturnType<typeof layTop>) => {
  const { doc, left, width } = sheet
  const from = sheet.y
  doc.roundedRect(left, from, width, top.boxHeight, 5).lineWidth(1).fillAndStroke(look.panel, look.edge)
  let y = from + 6
  for (const [at, line] of [...top.title, ...top.state, ...top.rest].entries()) {
    const isState = at === top.title.length
    if (isState) drawShape(doc, drawn.supplyState.mark, left + 12, y + 1.8, 7)
    sheet.write(line, left + (isState ? 23 : 12), y)
    y += lineHeight(line.style)
  }
  const wireX = left + barX + barWidth / 2
  const wireTop = from + top.boxHeight
  const wireBottom = wireTop + top.laid.height + 8
  drawWire(sheet, [wireX, wireTop], [wireX, wireBottom], drawn.conductor.csaMm2)
  writeBeside(sheet, top.laid, wireTop + 6)
  centred(sheet, drawn.conductor.size ?? "size not said", wireTop + 9)
  centred(sheet, drawn.conductor.length ?? "length not said", wireTop + 20)
  drawBar(sheet, wireBottom, wireBottom + 18)
  sheet.write({ text: "Main earthing terminal", style: styles.rowHead }, left + barX + barWidth + 8, wireBottom + 3)
  sheet.y = wireBottom + 18
}

/** Draws it as one tagged figure with the words of the picture beside it for those who hear it. */
export const drawArrangement = (sheet: Sheet, parent: Element, drawn: DrawnArrangement): void => {
  const top = layTop(sheet, drawn)
  const bonds = drawn.bonds.map((bond) => lay(sheet, bond))
  const whole = top.height + bonds.reduce((sum, bond) => sum + bond.height, 0)
  sheet.need(Math.min(whole, 300))
  const bbox = [sheet.left, sheet.y, sheet.left + sheet.width, Math.min(sheet.y + whole, sheet.bottom)]
  const figure = sheet.doc.struct("Figure", { alt: drawn.alt, bbox } as PDFKit.Mixins.StructureElementOptions)
  parent.add(figure)
  const waiting: ((() => void) & { height: number })[] = [
    Object.assign(() => drawTop(sheet, drawn, top), { height: top.height }),
    ...bonds.map((bond) => Object.assign(() => drawBond(sheet, bond), { height: bond.height })),
  ]
  while (waiting.length > 0) {
    sheet.need(waiting[0]!.height)
    sheet.picture(figure, "Figure", () => {
      while (waiting[0] && sheet.y + waiting[0].height <= sheet.bottom) waiting.shift()!()
    })
  }
  sheet.y += 10
}
