/** The desk in a real browser: the sample job put right by keys alone, signed, struck, saved, and every screen under axe. */
import { readFileSync } from "node:fs"
import AxeBuilder from "@axe-core/playwright"
import type { BrowserContext, Page } from "playwright-core"
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest"
import { readJobFile } from "../../src/record/jobFile"
import { project } from "../../src/record/project"
import { recordOf } from "../recordOf"
import { dropProfile, launch, makeProfile, type ServedApp, serveApp, storedLines } from "./openApp"

let app: ServedApp
let profile: string
let context: BrowserContext
let page: Page

beforeAll(async () => {
  app = await serveApp()
})
afterAll(() => app.close())

const openDesk = async (colorScheme: "light" | "dark" = "light", viewport = { width: 1440, height: 900 }) => {
  context = await launch({ profile, colorScheme, viewport })
  page = context.pages()[0]!
  await page.goto(app.url)
  await page.getByLabel("Open a job file").setInputFiles("samples/bakery.bothhands.jsonl")
  await expect.poll(async () => (await storedLines(page)).length).toBeGreaterThan(100)
  const { job } = (await storedLines(page))[0]!
  await page.goto(`${app.url}#office/${job}`)
  await page.getByRole("navigation", { name: "What needs eyes" }).waitFor({ timeout: 30_000 })
}

beforeEach(() => {
  profile = makeProfile()
})
afterEach(async () => {
  await context.close()
  dropProfile(profile)
})

/** Goes down the list by key until the row of that name has the focus. */
const goTo = async (name: string) => {
  // A line is on disk a moment before the panel closes, and until then keys are words in its fields.
  await page.locator(".desk-panel").waitFor({ state: "detached" })
  await page.keyboard.press("Home")
  for (let rows = 0; rows < 60; rows++) {
    const here = await page.evaluate(() => document.activeElement?.querySelector(".point-name")?.textContent)
    if (here === name) return
    await page.keyboard.press(rows % 2 === 0 ? "j" : "ArrowDown")
  }
  throw new Error(`There is no row ${name}`)
}

const isOutlined = () =>
  page.evaluate(
    () => getComputedStyle(document.activeElement!).outlineStyle !== "none" && document.activeElement !== document.body,
  )

/** Closes a panel or a dialog, and waits until it is gone: a key that comes with its end belongs to nobody. */
const closeAll = async () => {
  await page.keyboard.press("Escape")
  await page.locator(".desk-panel, dialog").waitFor({ state: "detached" })
}

test("three entries are put right by keys alone, and the log has grown by them", async () => {
  await openDesk()
  const before = await storedLines(page)
  await goTo("Water, size")
  expect(await isOutlined()).toBe(true)
  await page.keyboard.press("e")
  await page.keyboard.press("ArrowDown")
  await page.keyboard.press("Tab")
  await page.keyboard.type("sixteen on the photo")
  await page.locator(".turn-values", { hasText: "16 mm²" }).waitFor()
  await page.keyboard.press("Enter")
  await expect.poll(async () => recordOf(await storedLines(page))).toContain("water conductor_csa 16 mm², tapped")

  await goTo("Gas, length")
  await page.keyboard.press("Enter")
  await page.keyboard.press("e")
  await page.keyboard.type("9.5")
  await page.keyboard.press("Tab")
  await page.keyboard.type("measured again")
  await page.keyboard.press("Enter")
  await expect.poll(async () => recordOf(await storedLines(page))).toContain("gas length 9.5 m, tapped")

  await goTo("Earthing conductor, length")
  await page.keyboard.press("t")
  await page.keyboard.type("earthing conductor sixteen square four metres")
  await page.keyboard.press("Tab")
  await page.keyboard.type("four was said")
  await page.keyboard.press("Enter")
  await expect.poll(async () => recordOf(await storedLines(page))).toContain("earthing_conductor length 4 m, tapped")
  expect(await isOutlined()).toBe(true)

  const after = await storedLines(page)
  expect(after.slice(0, before.length)).toEqual(before)
  expect(recordOf(after)).toHaveLength(recordOf(before).length)
  await page.keyboard.press("?")
  await page.getByRole("dialog", { name: "Keys" }).waitFor()
  await closeAll()
  await page.keyboard.press("Escape")
  await expect.poll(() => page.evaluate(() => location.hash)).toBe("#office")
})

test("a change that breaks a rule is foretold, and then stands first in the list", async () => {
  await openDesk()
  await goTo("Water, size")
  await page.keyboard.press("e")
  await page.keyboard.press("ArrowUp")
  await page.getByText("6 mm² is too small", { exact: false }).first().waitFor()
  await page.keyboard.press("Tab")
  await page.keyboard.type("six on the reel")
  await page.keyboard.press("Enter")
  await page.getByRole("heading", { name: /Stops that stand open/ }).waitFor()
  await page.keyboard.press("s")
  await page.getByText("A stop stands open.", { exact: false }).waitFor()
})

test("signed by keys, a change takes the signature off and says so", async () => {
  await openDesk()
  await page.keyboard.press("s")
  await page.getByRole("dialog", { name: "Sign" }).waitFor()
  await page.getByLabel("Name (may stay empty)").focus()
  await page.keyboard.type("A. Example")
  await page.keyboard.press("Enter")
  await expect.poll(async () => project(await storedLines(page)).signatures).toMatchObject([{ name: "A. Example" }])
  await page.keyboard.press("Escape")
  await page.getByRole("dialog").waitFor({ state: "detached" })
  await page.getByText("Signed: did the work").waitFor()
  await goTo("Gas, length")
  await page.keyboard.press("e")
  await page.keyboard.type("9")
  await page.keyboard.press("Tab")
  await page.keyboard.type("measured again")
  await page.keyboard.press("Enter")
  await page.getByText("Opened again after signing").waitFor()
  await page.getByRole("heading", { name: /Changed after signing/ }).waitFor()
})

test("struck words are gone from the device, and the saved job file is whole", async () => {
  await openDesk()
  await goTo("Supply, neutral")
  await page.keyboard.press("x")
  await page.getByLabel(/Strike the same words/).check()
  await page.getByLabel("Why").fill("a private matter")
  await page.keyboard.press("Enter")
  await page.getByText("words were struck", { exact: false }).waitFor()
  await page.keyboard.press("d")
  const download = page.waitForEvent("download")
  await page.getByRole("button", { name: "Save Job file" }).click()
  const file = readFileSync(await (await download).path(), "utf8")
  expect(readJobFile(file)).toMatchObject({ ok: true, value: { faults: [], struck: 3 } })
  expect(file).toContain("[struck] neutral twenty five square")
  expect(file).not.toContain("supply neutral twenty five square")
})

test.each(["Table", "Record", "What was said", "Report"])("%s is saved from the desk", async (name) => {
  await openDesk()
  await page.keyboard.press("d")
  const download = page.waitForEvent("download")
  await page.getByRole("button", { name: `Save ${name}` }).click()
  const bytes = readFileSync(await (await download).path())
  expect((await download).suggestedFilename()).toMatch(/^The bakery.*2026-03-02\.(csv|json|vtt|pdf)$/)
  expect(bytes.length).toBeGreaterThan(1000)
})

const faultsOf = async () => {
  const { violations } = await new AxeBuilder({ page }).analyze()
  return violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target.join(" ")).join("; ")}`)
}

test.each(["light", "dark"] as const)("no fault under axe at the desk, %s", async (colorScheme) => {
  await openDesk(colorScheme)
  await goTo("Water, reading")
  expect(await faultsOf(), "list and detail").toEqual([])
  for (const key of ["e", "x"]) {
    await page.keyboard.press(key)
    await page.locator(".desk-panel").waitFor()
    expect(await faultsOf(), `panel ${key}`).toEqual([])
    await closeAll()
  }
  for (const key of ["s", "d", "?"]) {
    await page.keyboard.press(key)
    await page.getByRole("dialog").waitFor()
    expect(await faultsOf(), `dialog ${key}`).toEqual([])
    await closeAll()
  }
  await page.getByRole("button", { name: /The log/ }).click()
  expect(await faultsOf(), "the log").toEqual([])
})

test.each(["light", "dark"] as const)("no fault under axe on a narrow page, %s", async (colorScheme) => {
  await openDesk(colorScheme, { width: 390, height: 844 })
  expect(await faultsOf(), "list").toEqual([])
  await goTo("Water, size")
  await page.keyboard.press("Enter")
  await page.keyboard.press("t")
  expect(await faultsOf(), "a sentence typed anew").toEqual([])
  const isWide = await page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth)
  expect(isWide).toBe(false)
})
