// @vitest-environment happy-dom
/** The share sheet, on stand-ins for the browsers that have one: what goes, what is hidden, and what is no fault. */
import { act } from "react"
import { createRoot, type Root } from "react-dom/client"
import { afterEach, beforeEach, expect, test, vi } from "vitest"
import { ShareButtons } from "../../src/app/field/ShareButtons"
import { FilesDialog } from "../../src/app/office/desk/FilesDialog"
import { canShareFiles, Sharing } from "../../src/app/Sharing"
import { bakery } from "../review/officeJob"
import { createMadeUpSession } from "./createMadeUpSession"
import { madeUpViews } from "./madeUpViews"

let root: Root
let page: HTMLElement
beforeEach(() => {
  Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true })
  page = document.createElement("div")
  document.body.append(page)
  root = createRoot(page)
})
afterEach(() => {
  act(() => root.unmount())
  page.remove()
  for (const name of ["share", "canShare", "userActivation"]) Reflect.deleteProperty(navigator, name)
})

/** As Chromium on Android does: kinds are told by the end of the name. */
const takes = /\.(pdf|csv|txt|vtt)$/
const giveSheet = (share: (given: ShareData) => Promise<void>, isActive = true) =>
  Object.assign(navigator, {
    share: vi.fn(share),
    canShare: ({ files = [] }: ShareData) => files.every((file) => takes.test(file.name)),
    userActivation: { isActive },
  })
const fails = (name: string) => async () => {
  throw new DOMException("not now", name)
}

const file = (name: string, type: string) => new File(["words"], name, { type })
const jobFile = async () => file("bakery.bothhands.jsonl", "application/x-ndjson")
const names = () => [...page.querySelectorAll("button")].map((one) => one.textContent)

test("where the browser hands no files over, there is no button for it", () => {
  expect(canShareFiles()).toBe(false)
  act(() => root.render(<ShareButtons session={createMadeUpSession(madeUpViews.emptyJob())} />))
  expect(names()).toEqual([])
  act(() => root.render(<FilesDialog job={bakery()} close={() => {}} />))
  expect(names().filter((name) => name?.startsWith("Share"))).toEqual([])
})

test("on a phone the report and the job file can be shared at the end of a job", () => {
  giveSheet(async () => {})
  const session = createMadeUpSession(madeUpViews.emptyJob())
  act(() => root.render(<ShareButtons session={session} />))
  for (const button of page.querySelectorAll("button")) act(() => button.click())
  expect(names()).toEqual(["Share the report", "Share the job file"])
  expect(session.asked).toEqual([
    ["share", "report"],
    ["share", "job file"],
  ])
})

test("a job file goes as text where its own kind may not, with every byte of it", async () => {
  giveSheet(async () => {})
  expect(await new Sharing().share("job", jobFile)).toBe("shared")
  const [given] = vi.mocked(navigator.share).mock.calls[0]![0]!.files!
  expect([given?.name, given?.type]).toEqual(["bakery.bothhands.jsonl.txt", "text/plain"])
  expect(await given?.text()).toBe("words")
})

test.each([
  ["AbortError", true, "closed"],
  ["NotAllowedError", true, "refused"],
  ["NotAllowedError", false, "press again"],
  ["DataError", true, "refused"],
])("%s of the sheet, tapped just now %s: %s", async (name, isActive, shared) => {
  giveSheet(fails(name), isActive)
  expect(await new Sharing().share("job", jobFile)).toBe(shared)
})

test("what was made is kept for the next tap, and made anew once the job has grown", async () => {
  giveSheet(fails("NotAllowedError"), false)
  const sharing = new Sharing()
  const make = vi.fn(jobFile)
  await sharing.share("report 4", make)
  await sharing.share("report 4", make)
  expect(make).toHaveBeenCalledTimes(1)
  await sharing.share("report 5", make)
  expect(make).toHaveBeenCalledTimes(2)
})

test("a kind that the browser takes in no form is not offered to it", async () => {
  giveSheet(async () => {})
  Object.assign(navigator, { canShare: () => false })
  expect(await new Sharing().share("report", async () => file("report.pdf", "application/pdf"))).toBe("refused")
  expect(navigator.share).not.toHaveBeenCalled()
})

test("at the desk a share sheet that was shut is told as such, and as no fault", { timeout: 20_000 }, async () => {
  giveSheet(fails("AbortError"))
  act(() => root.render(<FilesDialog job={bakery()} close={() => {}} />))
  const share = [...page.querySelectorAll("button")].find((one) => one.textContent === "Share Table")
  await act(async () => share!.click())
  const told = () => expect(page.querySelector("[role=status]")?.textContent).toBe("Table: not handed over.")
  const look = async () => {
    await act(async () => void (await new Promise((done) => setTimeout(done, 20))))
    told()
  }
  await vi.waitFor(look, { timeout: 10_000 })
})
