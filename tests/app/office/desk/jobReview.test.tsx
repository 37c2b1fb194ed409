// @vitest-environment happy-dom
/** The desk on a store that forgets: what a refused write, a lost job and kept sound look like. */
import { act } from "react"
import { createRoot, type Root } from "react-dom/client"
import { afterEach, beforeEach, expect, test, vi } from "vitest"
import { JobReview } from "../../../../src/app/office/desk/JobReview"
import type { JobReviewProps } from "../../../../src/app/office/desk/ReviewProps"
import { refuse } from "../../../../src/facts/Outcome"
import { createMemoryStore } from "../../../../src/record/memoryStore"
import type { Store } from "../../../../src/record/Store"
import { recordOf } from "../../../recordOf"
import { deskTools, logOf, tools } from "../../../review/officeJob"
import { playHour } from "../../../transcripts/scoreHour"
import { noSound } from "../quietDesk"

// The real interpreter is made in the first test.
vi.setConfig({ testTimeout: 20_000 })

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
})

const settle = () => act(async () => void (await new Promise((done) => setTimeout(done, 60))))

const open = async (store: Store, more: Partial<JobReviewProps> = {}) => {
  const { newId } = deskTools()
  const back = vi.fn()
  const desk = {
    store,
    tools: { ...tools, newId },
    now: () => "2026-03-03T08:00:00.000Z",
    device: "desk",
    sound: noSound(),
  }
  act(() => root.render(<JobReview {...desk} job="hall" by="office" back={back} {...more} />))
  await settle()
  return back
}

const stored = async () => {
  const store = createMemoryStore()
  await store.append(
    logOf(["pme", "supply neutral twenty five square", "water four square", "reading point forty ohms"]),
  )
  return store
}

const press = (key: string) =>
  act(() => void window.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true })))
const type = (selector: string, text: string) => {
  const field = page.querySelector<HTMLInputElement>(selector)!
  act(() => {
    Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")?.set?.call(field, text)
    field.dispatchEvent(new Event("input", { bubbles: true }))
  })
}
const submit = () =>
  act(() => void page.querySelector("form")?.dispatchEvent(new Event("submit", { bubbles: true, cancelable: true })))
const words = (selector: string) => [...page.querySelectorAll(selector)].map((one) => one.textContent?.trim())

test("the worst stands first and is in hand, with its words lit", async () => {
  await open(await stored())
  expect(words(".points-head")[0]).toMatch(/Stops that stand open/)
  expect(words(".detail-head h2")).toEqual(["Water, size"])
  // The light comes after the first paint, and the first reading takes its time.
  for (let tries = 0; tries < 40 && words(".sentence-said mark").length === 0; tries++) await settle()
  expect(words(".sentence-said mark").join(" ")).toContain("four")
  expect(page.textContent).not.toMatch(/\bsafe\b/i)
  expect(page.querySelector("[style]")).toBeNull()
})

test("what the store refuses leaves the record as it was, and is said", async () => {
  const store = await stored()
  await open({ ...store, append: async () => refuse("The storage of this device is full.") })
  press("b")
  type("#desk-reason", "the owner insists")
  submit()
  await settle()
  expect(words(".refused")).toContain("The storage of this device is full.")
  expect(words("[role=status]")).toEqual(["The storage of this device is full."])
  expect(words(".points-head")[0]).toMatch(/Stops that stand open/)
})

test("a kept warning goes down the list with its reason, and stands there once", async () => {
  await open(await stored())
  press("b")
  type("#desk-reason", "the owner insists")
  submit()
  await settle()
  expect(words(".points-head").join()).not.toMatch(/Stops/)
  expect(words(".point-why")).toContain("Kept: the owner insists")
  expect(words(".point-name").filter((name) => name === "Water, size")).toHaveLength(1)
})

test("where no sound was kept, none is offered and nothing is said of it", async () => {
  await open(await stored())
  expect(words(".play-ways")).toEqual([])
})

test("sound is offered where it was kept, and silenced before the words are struck", async () => {
  const store = await stored()
  const done: string[] = []
  const silenced = vi.fn()
  const strike = vi.fn(async (...given: Parameters<Store["strike"]>) => {
    done.push("struck")
    return store.strike(...given)
  })
  await open(
    { ...store, strike },
    {
      sound: {
        ...noSound(),
        of: async () => ({ blob: new Blob(["sound"], { type: "audio/wav" }), from: 0, isSilenced: false }),
        silence: async (...given) => {
          silenced(...given)
          done.push("silenced")
          return { ok: true, value: undefined }
        },
      },
    },
  )
  expect(words(".play-sound")).toEqual(["Play the sentence"])
  press("x")
  type("#desk-reason", "private")
  submit()
  await settle()
  expect(done).toEqual(["silenced", "struck"])
  expect(silenced).toHaveBeenCalledWith(
    { job: "hall", heard: expect.any(String) },
    expect.any(Number),
    expect.any(Number),
  )
  expect(words(".sentence-said blockquote")[0]).toMatch(/^\[struck\]/)
})

test("what another window adds to the job is shown at once, and what is being typed stays", async () => {
  const store = await stored()
  const watchers: ((jobs: readonly string[]) => void)[] = []
  const watch = (changed: (jobs: readonly string[]) => void) => {
    watchers.push(changed)
    return () => {}
  }
  await open(store, { watch })
  press("b")
  type("#desk-reason", "the owner")
  const { lines } = await store.read("hall")
  await store.append(logOf(["gas ten square"], lines).slice(lines.length))
  expect(words(".point-name")).not.toContain("Gas, size")
  act(() => {
    for (const changed of watchers) changed(["another job"])
  })
  await settle()
  expect(words(".point-name")).not.toContain("Gas, size")
  act(() => {
    for (const changed of watchers) changed(["hall"])
  })
  await settle()
  expect(words(".point-name")).toContain("Gas, size")
  expect(page.querySelector<HTMLInputElement>("#desk-reason")?.value).toBe("the owner")
})

const namedRow = () => page.querySelector(".point-row[aria-current] .point-name")?.textContent
const goTo = (name: string) => {
  press("Home")
  for (let rows = 0; rows < 30 && namedRow() !== name; rows++) press("j")
  expect(namedRow()).toBe(name)
}

test("a transcript with misheard words is put right by keys alone", async () => {
  const store = createMemoryStore()
  // Fifteen was said, and the gas was not named again; both leave good sentences with another meaning.
  const heard = [
    "pme",
    "water sixteen square fifty metres",
    "gas ten square eight metres",
    "sixteen square label fitted",
  ]
  await store.append(playHour(heard).map((line) => ({ ...line, job: "hall" })))
  await open(store)
  expect(words(".points-head").join(" ")).toMatch(/In doubt.*Nobody has said yes yet/)
  goTo("Gas, size")
  expect(words(".detail-fault").join(" ")).toMatch(/first said otherwise: Gas\. Ten square/)
  press("u")
  type("#desk-reason", "that was the water")
  submit()
  await settle()
  goTo("Water, length")
  press("t")
  type("#desk-sentence", "water sixteen square fifteen metres")
  type("#desk-reason", "fifteen on the drawing")
  submit()
  await settle()
  for (let rows = 0; rows < 20 && words(".points-head").join(" ").includes("Nobody has said yes"); rows++) {
    press("Home")
    for (let step = 0; step < 20 && !page.querySelector(".detail .main-button"); step++) press("j")
    press("y")
    await settle()
  }
  expect(words(".points-head").join(" ")).not.toMatch(/In doubt|Nobody has said yes/)
  const { lines } = await store.read("hall")
  expect(recordOf(lines)).toEqual(
    expect.arrayContaining([
      "water length 15 m, tapped",
      "water conductor_csa 16 mm², tapped",
      "gas conductor_csa 10 mm², tapped",
      "gas length 8 m, tapped",
    ]),
  )
})

test("a job that is not stored here is said to be missing, with a way back", async () => {
  const back = await open(createMemoryStore())
  expect(words("[role=alert]")).toEqual(["No such job is stored on this device."])
  act(() => page.querySelector("button")?.click())
  expect(back).toHaveBeenCalledOnce()
})
