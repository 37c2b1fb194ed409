/** Every screen that a job goes through, in every theme, under axe; and a job done by keyboard alone. */
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

/** What axe finds; a theme changes nothing but colours, so that all but the first are looked at for those alone. */
const faultsOf = async (page: Page, coloursOnly = false) => {
  const axe = new AxeBuilder({ page }).setLegacyMode()
  const { violations } = await (coloursOnly ? axe.withRules(["color-contrast"]) : axe).analyze()
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

/** Looks at one screen in every theme. Twice the text size stands for all sizes in one of them. */
const lookAt = async (page: Page, what: string) => {
  for (const theme of ["light", "dark", "contrast"]) {
    await page.evaluate((name) => {
      document.documentElement.dataset.theme = name
      document.documentElement.dataset.text = name === "dark" ? "200" : "100"
    }, theme)
    expect(await faultsOf(page, theme !== "light"), `${what}, ${theme}`).toEqual([])
    const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)
    expect(overflow, `${what} fits its width, ${theme}`).toBeLessThanOrEqual(0)
  }
}

test("no fault under axe on any screen, in any theme", async () => {
  const profile = makeProfile()
  const context = await launch({ profile })
  try {
    const page = context.pages()[0]!
    await page.goto(app.url)
    await page.getByLabel("Where is the job?").waitFor()
    await lookAt(page, "start")
    await page.goto(`${app.url}#lesson`)
    await page.getByRole("button", { name: "Start the lesson" }).click()
    await page.getByRole("button", { name: "Show me" }).click()
    await page.getByText("10 mm²").first().waitFor()
    await lookAt(page, "the lesson")
    expect(await storedLines(page), "the lesson writes nothing").toEqual([])
    await page.getByRole("button", { name: "End the lesson" }).click()
    await startByKeyboard(page)
    await lookAt(page, "new job")
    await typeAll(page, [
      "pme",
      "supply neutral twenty five square",
      "gas ten square eight metres",
      "water four square",
    ])
    for (const screen of ["now", "picture", "record", "settings", "sign-off", "findings"]) {
      await page.evaluate((name) => {
        location.hash = name
      }, screen)
      await lookAt(page, screen)
    }
    await page.goBack()
    expect(new URL(page.url()).hash, "the way back").toBe("#sign-off")
    await page.reload()
    await page.locator(".job[data-screen=sign-off]").waitFor()
    await page.goto(`${app.url}#now`)
    await page.getByLabel("Or type it").focus()
    await typeAll(page, ["no make that ten square", "reading nought point nought five ohms"])
    await lookAt(page, "a reading that waits")
  } finally {
    await context.close()
    dropProfile(profile)
  }
})

test("a whole job by keyboard alone: new job, sentences, yes, a warning kept with its reason, and the sign-off", async () => {
  const profile = makeProfile()
  const context = await launch({ profile, viewport: { width: 1280, height: 900 } })
  try {
    const page = context.pages()[0]!
    await startByKeyboard(page)
    await typeAll(page, ["pme", "supply neutral twenty five square", "water four square", "fourteen metres"])
    await typeAll(page, ["keep it because the old one is replaced on thursday"])
    await typeAll(page, ["gas ten square", "reading nought point nought three ohms"])
    await page.getByLabel("Or type it").blur()
    await page.keyboard.press("y")
    await expect.poll(async () => recordOf(await storedLines(page))).toContain("gas resistance 0.03 Ω, tapped")
    await page.getByRole("link", { name: "Sign off" }).focus()
    await page.keyboard.press("Enter")
    await page.getByRole("button", { name: "Sign off this job" }).press("Enter")
    await page.getByRole("button", { name: "Yes, sign off" }).press("Enter")
    await page.getByText(/Signed off .*, by the worker/).waitFor()
    const lines = await storedLines(page)
    expect(lines.find((line) => line.type === "kept")).toMatchObject({ reason: "the old one is replaced on thursday" })
    const signed = lines.find((line) => line.type === "signed_off")
    expect(signed?.type === "signed_off" && signed.undone.length).toBeGreaterThan(0)
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
