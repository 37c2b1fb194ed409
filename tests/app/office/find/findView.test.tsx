// @vitest-environment happy-dom
/** The list of all jobs: what is understood shows, what is not is said, and both hands on the keyboard get everywhere. */
import { act } from "react"
import { createRoot, type Root } from "react-dom/client"
import { afterEach, beforeEach, expect, test, vi } from "vitest"
import type { Desk } from "../../../../src/app/office/Desk"
import { FindView } from "../../../../src/app/office/find/FindView"
import { createMemoryStore } from "../../../../src/record/memoryStore"
import { createRowMaker } from "../../../../src/search/makeRow"
import { realTools } from "../../../realTools"
import { opened, stampLines, waterReading, waterSize } from "../../../record/someLines"
import { noSound } from "../quietDesk"

let root: Root
let page: HTMLElement

beforeEach(async () => {
  Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true })
  page = document.createElement("div")
  document.body.append(page)
  root = createRoot(page)
  const tools = { ...realTools(), newId: () => "id" }
  const store = createMemoryStore(createRowMaker(tools.check, "1"))
  await store.append(stampLines([opened, waterSize(4), waterReading(0.03)], "bakery"))
  const hall = { ...opened, place: "The village hall" } as typeof opened
  await store.append(stampLines([hall, waterSize(10)], "hall"), [
    {
      id: "1",
      job: "hall",
      file: "hall.jsonl",
      kind: "job file",
      sha256: "",
      at: "",
      lines: 2,
      linesAfter: 2,
      faults: ["It was cut."],
    },
  ])
  const desk: Desk = { store, tools, now: () => "2026-03-04T09:00:00+00:00", device: "desk", sound: noSound() }
  await act(async () => root.render(<FindView desk={desk} />))
  await vi.waitFor(() => expect(text(".find-count")).toBe("2 jobs"))
})
afterEach(() => {
  act(() => root.unmount())
  page.remove()
})

const text = (where: string) => page.querySelector(where)?.textContent?.trim()
const texts = (where: string) => [...page.querySelectorAll(where)].map((one) => one.textContent?.trim())
const box = () => page.querySelector<HTMLInputElement>(".find-words input")!
const type = (words: string) =>
  act(async () => {
    Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")?.set?.call(box(), words)
    box().dispatchEvent(new Event("input", { bubbles: true }))
  })
const press = (key: string, target: EventTarget = document.body) =>
  act(async () => void target.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true, cancelable: true })))

test("what was understood stands on chips, and a chip takes its condition out", async () => {
  await type("water under 10 hall")
  expect(texts(".find-chip")).toEqual(["Water: size under 10 mm²", "Place or said: hall"])
  expect(text(".find-count")).toBe("0 of 2 jobs")
  expect(page.textContent).toContain("No job is like that")
  await act(async () => page.querySelectorAll<HTMLElement>(".find-chip")[1]!.click())
  expect(box().value).toBe("water under 10")
  expect(text(".find-count")).toBe("1 of 2 jobs")
})

test("what was not understood is said, and narrows nothing", async () => {
  await type("under 10")
  expect(text(".find-unclear")).toContain("Not used: “under 10”, say of what")
  expect(text(".find-count")).toBe("2 jobs")
})

test("a slash goes to the search box, and is no letter there", async () => {
  await press("/")
  expect(document.activeElement).toBe(box())
})

test("an example is added to what was typed already", async () => {
  await act(async () => [...page.querySelectorAll<HTMLElement>(".find-examples button")][0]!.click())
  expect(box().value).toBe("open stops")
  expect(text(".find-count")).toBe("1 of 2 jobs")
})
