/** Every state of the screen that a job goes through, in both themes, under axe; and a job done by keyboard alone. */
import AxeBuilder from "@axe-core/playwright"
import type { Page } from "playwright-core"
import { afterAll, beforeAll, expect, test } from "vitest"
import { recordOf } from "../recordOf"
import { dropProfile, launch, makeProfile, type ServedApp, serveApp, storedLines } from "./openApp"

let app: ServedApp
beforeAll(async () => {
  app = await serveApp()
})
afterAll(() => app.close())

const faultsOf = async (page: Page) => {
  const { violations } = await new AxeBuilder({ page }).analyze()
  return violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target.join(" ")).join("; ")}`)
}

/** Types sentences into the box that has the focus, each with Enter, and waits until each is dealt with. */
const typeAll = async (page: Page, sentences: readonly string[]) => {
  for (const sentence of sentences) {
    const before = (await storedLines(page)).length
    await page.keyboard.type(sentence)
    await page.keyboard.press("Enter")
    await expect.poll(async () => (await storedLines(page)).length).toBeGreaterThan(before)
  }
}

const startByKeyboard = async (page: Page) => {
  await page.goto(app.url)
  await page.getByLabel("Where is the job?").focus()
  await page.keyboard.type("The village hall")
  await page.keyboard.press("Enter")
  const box = page.getByLabel("Or type it")
  await box.waitFor({ timeout: 30_000 })
  await box.focus()
}

test.each(["light", "dark"] as const)("no fault under axe, %s", async (colorScheme) => {
  const profile = makeProfile()
  const context = await launch({ profile, colorScheme })
  try {
    const page = context.pages()[0]!
    await page.goto(app.url)
    await page.getByLabel("Where is the job?").waitFor()
    expect(await faultsOf(page), "start").toEqual([])
    await startByKeyboard(page)
    expect(await faultsOf(page), "new job").toEqual([])
    await typeAll(page, [
      "pme",
      "supply neutral twenty five square",
      "gas ten square eight metres",
      "water four square",
    ])
    expect(await faultsOf(page), "a warning").toEqual([])
    await typeAll(page, ["no make that ten square", "reading nought point nought five ohms"])
    expect(await faultsOf(page), "a reading that waits").toEqual([])
  } finally {
    await context.close()
    dropProfile(profile)
  }
})

test("a warned value is put right and a reading confirmed by keyboard alone", async () => {
  const profile = makeProfile()
  const context = await launch({ profile })
  try {
    const page = context.pages()[0]!
    await startByKeyboard(page)
    await typeAll(page, ["pme", "supply neutral twenty five square", "water four square", "no make that ten square"])
    await typeAll(page, ["fourteen metres", "reading nought point nought three ohms"])
    await page.getByLabel("Or type it").blur()
    await page.keyboard.press("y")
    await expect.poll(async () => recordOf(await storedLines(page))).toContain("water resistance 0.03 Ω, tapped")
    await page.keyboard.press("u")
    await expect.poll(async () => recordOf(await storedLines(page)).join()).not.toContain("resistance")
  } finally {
    await context.close()
    dropProfile(profile)
  }
})
