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
    await page.getByRole("link", { name: "Settings" }).click()
    await page.getByRole("heading", { name: "Settings" }).waitFor()
    await lookAt(page, "settings before a job")
    await page.goto(`${app.url}#learn`)
    await page.getByRole("button", { name: "Start reading" }).waitFor()
    await lookAt(page, "learning a voice")
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

/** What of an element can tell it from another where the reader's own colours stand in for the page's. */
const looksOf = (page: Page, selector: string) =>
  page.evaluate((wanted) => {
    const look = (one: Element) => {
      const { backgroundColor, color, borderTopColor, borderTopStyle, textDecorationLine } = getComputedStyle(one)
      const before = getComputedStyle(one, "::before")
      const line = before.content + before.borderTopStyle + before.borderTopWidth
      return [backgroundColor, color, borderTopColor, borderTopStyle, textDecorationLine, line].join(" ")
    }
    return [...document.querySelectorAll(wanted)].map(look)
  }, selector)

test("with the reader's own colours states are still told apart, drawings are seen, and the focus shows", async () => {
  const profile = makeProfile()
  const context = await launch({ profile })
  try {
    const page = context.pages()[0]!
    await startByKeyboard(page)
    await typeAll(page, [
      "pme",
      "supply neutral twenty five square",
      "water four square",
      "gas ten square eight metres",
    ])
    await typeAll(page, ["reading nought point nought three ohms"])
    for (const theme of ["light", "dark"] as const) {
      // Chromium's two stand-ins for a system's colours; the theme chosen on the page is the other one on purpose.
      await page.emulateMedia({ forcedColors: "active", colorScheme: theme })
      await page.evaluate(
        (other) => {
          document.documentElement.dataset.theme = other
        },
        theme === "light" ? "dark" : "light",
      )
      for (const screen of ["now", "picture", "record", "findings", "settings"]) {
        await page.evaluate((name) => {
          location.hash = name
        }, screen)
        await page.locator(`.job[data-screen=${screen}]`).waitFor()
        const canvas = await page.evaluate(() => getComputedStyle(document.body).backgroundColor)
        const marks = await page.evaluate(() =>
          [...document.querySelectorAll("svg.mark path, svg.icon path, svg.ear-shape path")].map(
            (path) => getComputedStyle(path).stroke,
          ),
        )
        expect(marks.length, `${screen} has marks`).toBeGreaterThan(5)
        const hidden = marks.filter((stroke) => stroke === canvas)
        const lit = await page.locator(".waits.answer-yes svg path, .main-button svg path").count()
        expect(hidden.length, `${screen}, ${theme}: marks in the colour of the page`).toBeLessThanOrEqual(lit)
        const bar = screen === "settings" ? ".job-head" : ".job-nav"
        const [here] = await looksOf(page, `${bar} [aria-current="page"]`)
        const others = await looksOf(page, `${bar} :is(a, button):not([aria-current])`)
        expect(others, `${screen}, ${theme}: the screen shown is marked`).not.toContain(here)
      }
      const [chosen] = await looksOf(page, ".choice-chosen")
      expect(await looksOf(page, ".choice-way:not(.choice-chosen)"), "the choice is marked").not.toContain(chosen)
      await page.evaluate(() => {
        location.hash = "now"
      })
      const [yes] = await looksOf(page, ".answer-yes.waits")
      expect(await looksOf(page, ".answer-other"), "the awaited answer is marked").not.toContain(yes)
      for (let stop = 0; stop < 12; stop++) {
        await page.keyboard.press("Tab")
        const ring = await page.evaluate(() => {
          const ringOf = (one: Element | null) => one && getComputedStyle(one)
          const focused = document.activeElement
          return [focused, focused?.closest(":focus-within:not(body,html,main)") ?? null]
            .map(ringOf)
            .some((style) => style && style.outlineStyle !== "none" && Number.parseFloat(style.outlineWidth) >= 2)
        })
        expect(ring, `stop ${stop} of the keyboard shows, ${theme}`).toBe(true)
      }
      await page.emulateMedia({ forcedColors: "none" })
    }
  } finally {
    await context.close()
    dropProfile(profile)
  }
})
