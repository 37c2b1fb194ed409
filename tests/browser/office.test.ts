/** The desk in a real browser: the sample job put right by keys alone, signed, struck, saved, and every screen under axe. */
import { readFileSync } from "node:fs"
import AxeBuilder from "@axe-core/playwright"
import type { Browser, BrowserContext, Page } from "playwright-core"
import { afterAll, afterEach, beforeAll, expect, test } from "vitest"
import { readJobFile } from "../../src/record/jobFile"
import { project } from "../../src/record/project"
import { recordOf } from "../recordOf"
import { launchBrowser, type ServedApp, serveApp, storedLines } from "./openApp"

let app: ServedApp
let browser: Browser
let context: BrowserContext
let page: Page

beforeAll(async () => {
  app = await serveApp()
  browser = await launchBrowser()
})
afterAll(async () => {
  await browser?.close()
  await app.close()
})

const openDesk = async (viewport = { width: 1440, height: 900 }) => {
  context = await browser.newContext({ viewport })
  page = await context.newPage()
  await page.goto(app.url)
  await page.getByLabel("Open a job file").setInputFiles("samples/bakery.bothhands.jsonl")
  await expect.poll(async () => (await storedLines(page)).length).toBeGreaterThan(100)
  const { job } = (await storedLines(page))[0]!
  await page.goto(`${app.url}#office/${job}`)
  await page.getByRole("navigation", { name: "What needs eyes" }).waitFor({ timeout: 30_000 })
}

afterEach(() => context.close())

/** Goes down the list by key until the row of that name has the focus. */
const goTo = async (name: string) => {
  await panelGone()
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

/** Opens a panel by its key, and waits until one of its fields has the focus: keys before that are the desk's own. */
const openPanel = async (key: "e" | "t" | "x") => {
  await page.keyboard.press(key)
  await page.locator(".desk-panel :focus").waitFor()
}

/** Sends what was filled in, and waits until it is on record and the panel is gone. */
const sendPanel = async () => {
  await page.keyboard.press("Enter")
  await panelGone()
}

const panelGone = () => page.locator(".desk-panel").waitFor({ state: "detached" })

/** Opens a dialog by its key. */
const openDialog = async (key: "s" | "d" | "?") => {
  await page.keyboard.press(key)
  await page.locator("dialog[open]").waitFor()
}

/** Closes a panel or a dialog, and waits until it is gone: a key that comes with its end belongs to nobody. */
const closeAll = async () => {
  await page.keyboard.press("Escape")
  await expect.poll(() => page.locator(".desk-panel, dialog").count()).toBe(0)
}

test("three entries are put right by keys alone, and the log has grown by them", async () => {
  await openDesk()
  const before = await storedLines(page)
  await goTo("Water, size")
  expect(await isOutlined()).toBe(true)
  await openPanel("e")
  await page.keyboard.press("ArrowDown")
  await page.keyboard.press("Tab")
  await page.keyboard.type("sixteen on the photo")
  await page.locator(".turn-values", { hasText: "16 mm²" }).waitFor()
  await sendPanel()

  await goTo("Gas, length")
  await page.keyboard.press("Enter")
  await page.locator(".detail h2:focus").waitFor()
  await openPanel("e")
  await page.keyboard.type("9.5")
  await page.keyboard.press("Tab")
  await page.keyboard.type("measured again")
  await sendPanel()

  await goTo("Earthing conductor, length")
  await openPanel("t")
  await page.keyboard.type("earthing conductor sixteen square four metres")
  await page.keyboard.press("Tab")
  await page.keyboard.type("four was said")
  await sendPanel()
  await page.locator(".point-row:focus").waitFor()
  expect(await isOutlined()).toBe(true)

  const after = await storedLines(page)
  expect(after.slice(0, before.length)).toEqual(before)
  expect(recordOf(after)).toEqual(
    expect.arrayContaining([
      "water conductor_csa 16 mm², tapped",
      "gas length 9.5 m, tapped",
      "earthing_conductor length 4 m, tapped",
    ]),
  )
  expect(recordOf(after)).toHaveLength(recordOf(before).length)
  await openDialog("?")
  await page.getByRole("dialog", { name: "Keys" }).waitFor()
  await closeAll()
  await page.keyboard.press("Escape")
  await expect.poll(() => page.evaluate(() => location.hash)).toBe("#office")
})

test("what another window writes to the job stands at the desk without a reload", async () => {
  await openDesk()
  const other = await context.newPage()
  await other.goto(page.url())
  await other.getByRole("navigation", { name: "What needs eyes" }).waitFor({ timeout: 30_000 })
  const here = page
  page = other
  await goTo("Gas, length")
  await openPanel("e")
  await page.keyboard.type("9.5")
  await page.keyboard.press("Tab")
  await page.keyboard.type("measured again")
  await sendPanel()
  await here.locator(".point-row", { hasText: /Gas, length\s*9\.5 m/ }).waitFor()
})

test("a change that breaks a rule is foretold, and then stands first in the list", async () => {
  await openDesk()
  await goTo("Water, size")
  await openPanel("e")
  await page.keyboard.press("ArrowUp")
  await page.getByText("6 mm² is too small", { exact: false }).first().waitFor()
  await page.keyboard.press("Tab")
  await page.keyboard.type("six on the reel")
  await sendPanel()
  await page.getByRole("heading", { name: /Stops that stand open/ }).waitFor()
  await openDialog("s")
  await page.getByText("A stop stands open.", { exact: false }).waitFor()
})

test("signed by keys, a change takes the signature off and says so", async () => {
  await openDesk()
  await openDialog("s")
  await page.getByRole("dialog", { name: "Sign" }).waitFor()
  await page.getByLabel("Name (may stay empty)").focus()
  await page.keyboard.type("A. Example")
  await page.keyboard.press("Enter")
  await expect.poll(async () => project(await storedLines(page)).signatures).toMatchObject([{ name: "A. Example" }])
  await page.getByText("Signed: did the work").waitFor()
  await closeAll()
  await goTo("Gas, length")
  await openPanel("e")
  await page.keyboard.type("9")
  await page.keyboard.press("Tab")
  await page.keyboard.type("measured again")
  await sendPanel()
  await page.getByText("Opened again after signing").waitFor()
  await page.getByRole("heading", { name: /Changed after signing/ }).waitFor()
})

test("struck words are gone from the device, and the saved job file is whole", async () => {
  await openDesk()
  await goTo("Supply, neutral")
  await openPanel("x")
  await page.getByLabel(/Strike the same words/).check()
  await page.getByLabel("Why").fill("a private matter")
  await sendPanel()
  await page.getByText("words were struck", { exact: false }).waitFor()
  await openDialog("d")
  const download = page.waitForEvent("download")
  await page.getByRole("button", { name: "Save Job file" }).click()
  const file = readFileSync(await (await download).path(), "utf8")
  expect(readJobFile(file)).toMatchObject({ ok: true, value: { faults: [], struck: 3 } })
  expect(file).toContain("[struck] neutral twenty five square")
  expect(file).not.toContain("supply neutral twenty five square")
})

test("table, record, subtitles and report are saved from the desk", async () => {
  await openDesk()
  await openDialog("d")
  for (const name of ["Table", "Record", "What was said", "Report"]) {
    const download = page.waitForEvent("download")
    await page.getByRole("button", { name: `Save ${name}` }).click()
    const bytes = readFileSync(await (await download).path())
    expect((await download).suggestedFilename()).toMatch(/^The bakery.*2026-03-02\.(csv|json|vtt|pdf)$/)
    expect(bytes.length, name).toBeGreaterThan(1000)
  }
})

/** Faults under axe in both themes: what is open stays open while the colours change. */
const expectNoFault = async (where: string) => {
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme })
    const { violations } = await new AxeBuilder({ page }).analyze()
    const faults = violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target.join(" ")).join("; ")}`)
    expect(faults, `${where}, ${colorScheme}`).toEqual([])
  }
}

test("no fault under axe at the desk, light and dark", async () => {
  await openDesk()
  await goTo("Water, reading")
  await expectNoFault("list and detail")
  for (const key of ["e", "x"] as const) {
    await openPanel(key)
    await expectNoFault(`panel ${key}`)
    await closeAll()
  }
  for (const key of ["s", "d", "?"] as const) {
    await openDialog(key)
    await expectNoFault(`dialog ${key}`)
    await closeAll()
  }
  await page.getByRole("button", { name: /The log/ }).click()
  await page.locator("dialog[open]").waitFor()
  await expectNoFault("the log")
})

test("no fault under axe on a narrow page, light and dark", async () => {
  await openDesk({ width: 390, height: 844 })
  await expectNoFault("list")
  await goTo("Water, size")
  await page.keyboard.press("Enter")
  await page.locator(".detail h2:focus").waitFor()
  await openPanel("t")
  await expectNoFault("a sentence typed anew")
  const isWide = await page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth)
  expect(isWide).toBe(false)
})
