/** One job in two windows: one leads, the other follows and says so, and takes over when asked or when the first is gone. */
import type { Page } from "playwright-core"
import { afterAll, beforeAll, expect, test } from "vitest"
import { dropProfile, launch, makeProfile, type ServedApp, serveApp, storedLines } from "./openApp"

let app: ServedApp
beforeAll(async () => {
  app = await serveApp()
})
afterAll(() => app.close())

const box = (page: Page) => page.getByLabel("Or type it")
const follows = (page: Page) => page.getByText("Another window has this job in hand.")

const typeEntry = async (page: Page, words: string) => {
  const before = (await storedLines(page)).length
  await box(page).fill(words)
  await box(page).press("Enter")
  await expect.poll(async () => (await storedLines(page)).length).toBeGreaterThan(before)
}

test("a second window follows, takes over when asked, and again when the first one closes", async () => {
  const profile = makeProfile()
  const context = await launch({ profile })
  try {
    const first = context.pages()[0]!
    await first.goto(app.url)
    await first.getByLabel("Where is the job?").fill("The village hall")
    await first.getByRole("button", { name: "Start a job" }).click()
    await typeEntry(first, "water ten square")

    const second = await context.newPage()
    await second.goto(`${app.url}#record`)
    await follows(second).waitFor()
    await second.getByRole("button", { name: /Size\s*10 mm²/ }).waitFor()
    await typeEntry(first, "fourteen metres")
    await second.getByRole("button", { name: /Length\s*14 m/ }).waitFor()
    expect(await second.getByRole("button", { name: "Yes", exact: true }).count()).toBe(0)
    const before = await storedLines(second)

    await second.getByRole("button", { name: "Take over here" }).click()
    await follows(first).waitFor()
    await expect.poll(() => follows(second).count()).toBe(0)
    await second.goto(`${app.url}#now`)
    await typeEntry(second, "gas six square")
    await first.goto(`${app.url}#record`)
    await first.getByRole("button", { name: /Size\s*6 mm²/ }).waitFor()

    await second.close()
    await expect.poll(() => follows(first).count()).toBe(0)
    await first.goto(`${app.url}#now`)
    await typeEntry(first, "eight metres")
    const lines = await storedLines(first)
    expect(lines.slice(0, before.length)).toEqual(before)
    expect(lines.map((line) => line.seq)).toEqual(lines.map((_, index) => index))
    expect(lines.filter((line) => line.type === "put_away")).toEqual([])
  } finally {
    await context.close()
    dropProfile(profile)
  }
})
