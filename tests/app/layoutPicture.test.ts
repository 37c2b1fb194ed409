/** The picture at every width a reader may have: nothing may run out of it, and no text into another. */
import { expect, test } from "vitest"
import { textSizes, widthOf } from "../../src/app/field/flowText"
import { layoutPicture } from "../../src/app/field/layoutPicture"
import { pictureOf } from "../../src/app/field/pictureOf"
import { pictureWords } from "../../src/app/field/pictureWords"
import { madeUpViews } from "./madeUpViews"

const views = ["emptyJob", "readingWaits", "warningOpen", "busyJob"] as const
const widths = [160, 240, 340, 520, 900]
const cases = views.flatMap((view) => widths.map((width) => [view, width] as const))

const laidTexts = (view: (typeof views)[number], width: number) => {
  const laid = layoutPicture(pictureOf(madeUpViews[view]().dialogue), width)
  const texts = [laid.supply, laid.conductor, laid.bar, ...laid.bonds, laid.spare].flatMap((one) => one.texts)
  const boxes = texts.map((one) => ({
    text: one.text,
    left: one.x,
    right: one.x + (one.lead ?? 0) + widthOf(one.text, one.size),
    top: one.y - textSizes[one.size] * 0.8,
    bottom: one.y + textSizes[one.size] * 0.2,
  }))
  return { laid, boxes }
}

test.each(cases)("%s fits into a width of %d", (view, width) => {
  const { laid, boxes } = laidTexts(view, width)
  expect(boxes.filter((box) => box.right > laid.width || box.bottom > laid.height || box.top < 0)).toEqual([])
})

test.each(cases)("no two texts of %s meet at a width of %d", (view, width) => {
  const { boxes } = laidTexts(view, width)
  const meeting = boxes.flatMap((a, index) =>
    boxes
      .slice(index + 1)
      .filter((b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
      .map((b) => `${a.text} / ${b.text}`),
  )
  expect(meeting).toEqual([])
})

test("the picture grows by one line for each part that is named, and always has a spare way", () => {
  const none = laidTexts("emptyJob", 340).laid
  const one = laidTexts("readingWaits", 340).laid
  const four = laidTexts("warningOpen", 340).laid
  expect([none.bonds.length, one.bonds.length, four.bonds.length]).toEqual([0, 1, 4])
  expect(none.height).toBeLessThan(one.height)
  expect(one.height).toBeLessThan(four.height)
  for (const laid of [none, one, four]) expect(laid.spare.y).toBeLessThan(laid.bar.to)
})

test("a name is kept whole, however long", () => {
  const { boxes } = laidTexts("warningOpen", 160)
  const words = boxes.map((box) => box.text).join(" ")
  expect(words).toContain("Flour silo frame next to the goods entrance")
})

test("the words for screen readers hold every value of the picture", () => {
  const picture = pictureOf(madeUpViews.warningOpen().dialogue)
  expect(pictureWords(picture)).toEqual([
    "Supply, TN-C-S, Neutral 25 mm², Isolated, proved dead.",
    "Earthing conductor, 16 mm²: on record.",
    "Gas, 10 mm², 6.5 m, clamp at 450 mm, 0.01 Ω, pipe cleaned, clamp fitted, label fitted, one end off, on the terminal: on record.",
    "Heating, 10 mm², 11 m, over range, > 99.9 kΩ: warning.",
    "Flour silo frame next to the goods entrance: nothing said yet.",
    "Water, 4 mm², 8 m: stop.",
  ])
})
