/**
 * Where everything of the picture stands, for a given width. The unit is a sixteenth of the page's text size, so the
 * picture grows with the reader's text and lays itself out again instead of shrinking its words.
 */

import { showStep } from "../parts/showStep"
import { flowText, type Placed, type Token } from "./flowText"
import type { Picture, PictureLine, PictureState } from "./pictureOf"

/** What a piece of text is, for its look. */
export type TextKind =
  | { as: "name" | "value" | "quiet" }
  | { as: "state"; shape: PictureState["shape"] }
  | { as: "step" }

export interface LaidLine {
  line: PictureLine
  /** Height of the conductor itself; texts are placed from the picture's top left. */
  y: number
  texts: readonly Placed<TextKind>[]
}

export interface LaidPicture {
  width: number
  height: number
  /** The block at the top, with its texts. */
  supply: { height: number; glyphY: number; texts: readonly Placed<TextKind>[] }
  /** Where the earthing conductor runs down, with its texts. */
  conductor: { from: number; to: number; texts: readonly Placed<TextKind>[] }
  /** The terminal's bar. */
  bar: { from: number; to: number; texts: readonly Placed<TextKind>[] }
  bonds: readonly LaidLine[]
  spare: { y: number; texts: readonly Placed<TextKind>[] }
}

/** Fixed places across the picture, in its units. */
export const places = { barX: 24, textX: 54, partSize: 48, edge: 8, glyphSize: 64 } as const

const shift = (placed: readonly Placed<TextKind>[], x: number, y: number) =>
  placed.map((one) => ({ ...one, x: one.x + x, y: one.y + y }))

const stateToken = (state: PictureState): Token<TextKind> => ({
  text: state.words,
  size: "small",
  lead: 22,
  kind: { as: "state", shape: state.shape },
})

const headTokens = (line: PictureLine): Token<TextKind>[] => [
  { text: line.name, size: "name", kind: { as: "name" } },
  stateToken(line.state),
]

const valueTokens = (line: PictureLine) =>
  line.values.map((text): Token<TextKind> => ({ text, size: "value", kind: { as: "value" } }))

const stepTokens = (line: PictureLine) =>
  line.steps.map(
    (step): Token<TextKind> => ({ text: showStep(step).toLowerCase(), size: "small", lead: 20, kind: { as: "step" } }),
  )

/** Blocks of text, one under the other. */
const stack = (blocks: readonly (readonly Token<TextKind>[])[], room: number) => {
  const placed: Placed<TextKind>[] = []
  let height = 0
  for (const block of blocks) {
    const flowed = flowText(block, room)
    placed.push(...shift(flowed.placed, 0, height))
    height += flowed.height
  }
  return { placed, height }
}

/** Below this width, words get the whole width and stand clear of what is drawn beside them. */
const narrow = 280
/** Below this width, everything is drawn smaller instead: about six letters a line. */
const leastWidth = 200

const laySupply = (picture: Picture, width: number): LaidPicture["supply"] => {
  const beside = width >= narrow
  const left = beside ? places.glyphSize + 28 : 16
  const title: Token<TextKind> = picture.arrangement
    ? { text: picture.arrangement, size: "big", kind: { as: "name" } }
    : { text: "Supply not said yet", size: "name", kind: { as: "quiet" } }
  const rest = picture.supply.map((text): Token<TextKind> => ({ text, size: "value", kind: { as: "value" } }))
  const marked =
    picture.supplyState.shape === "yes" || picture.supplyState.shape === "bare" ? [] : [stateToken(picture.supplyState)]
  const block = stack([[title, ...marked], rest], width - left - 16)
  if (!beside) {
    const top = places.glyphSize + 20
    return { height: top + block.height + 12, glyphY: 12, texts: shift(block.placed, left, top) }
  }
  const height = Math.max(block.height + 28, places.glyphSize + 24)
  const glyphY = (height - places.glyphSize) / 2
  return { height, glyphY, texts: shift(block.placed, left, (height - block.height) / 2) }
}

const layBond = (line: PictureLine, top: number, width: number): { laid: LaidLine; bottom: number } => {
  const beside = width >= narrow
  const part = beside ? places.partSize + 12 : 0
  const room = width - places.textX - places.edge - part
  const head = flowText(headTokens(line), room)
  const clear = beside ? 8 : places.partSize / 2 + 4
  const y = top + head.height + clear
  const foot = stack([valueTokens(line), stepTokens(line)], room)
  const footTop = y + (beside ? 10 : clear)
  const texts = [...shift(head.placed, places.textX, top), ...shift(foot.placed, places.textX, footTop)]
  return { laid: { line, y, texts }, bottom: Math.max(footTop + foot.height, y + places.partSize / 2) + 20 }
}

/** Lays the whole picture out. `width` is in the picture's units. */
export const layoutPicture = (picture: Picture, width: number): LaidPicture => {
  const wide = Math.max(leastWidth, width)
  const room = wide - places.textX - places.edge
  const supply = laySupply(picture, wide)
  const ec = stack([headTokens(picture.conductor), valueTokens(picture.conductor)], room)
  const ecTop = supply.height + 12
  const barTop = ecTop + Math.max(ec.height, 28) + 14
  const title = flowText<TextKind>([{ text: "Main earthing terminal", size: "name", kind: { as: "name" } }], room)
  const bonds: LaidLine[] = []
  let top = barTop + title.height + 20
  for (const bond of picture.bonds) {
    const { laid, bottom } = layBond(bond, top, wide)
    bonds.push(laid)
    top = bottom
  }
  const spareWords = picture.bonds.length > 0 ? "spare way" : "Name a part, and its bond is drawn here"
  const spare = flowText<TextKind>([{ text: spareWords, size: "small", kind: { as: "quiet" } }], room)
  const spareY = top + spare.height / 2 + 2
  return {
    width: wide,
    height: spareY + Math.max(spare.height / 2, 14) + 12,
    supply,
    conductor: { from: supply.height, to: barTop, texts: shift(ec.placed, places.textX, ecTop) },
    bar: { from: barTop, to: spareY + 16, texts: shift(title.placed, places.textX, barTop + 4) },
    bonds,
    spare: { y: spareY, texts: shift(spare.placed, places.textX, spareY - spare.height / 2) },
  }
}
