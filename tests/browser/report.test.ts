/** The PDF report as a real browser makes it: its letters are fetched only then, and pdf.js reads what was downloaded. */
import { readFileSync } from "node:fs"
import { afterAll, beforeAll, expect, test } from "vitest"
import { readPdf } from "../exports/readPdf"
import { dropProfile, launch, makeProfile, type ServedApp, serveApp } from "./openApp"

let app: ServedApp
beforeAll(async () => {
  app = await serveApp()
})
afterAll(() => app.close())

test("a typed job is saved as a report that reads back", async () => {
  const profile = makeProfile()
  const context = await launch({ profile })
  try {
    const page = context.pages()[0]!
    const asked: string[] = []
    page.on("request", (request) => void asked.push(request.url()))
    await page.goto(app.url)
    await page.getByLabel("Where is the job?").fill("The village hall")
    await page.getByRole("button", { name: "Start a job" }).click()
    const box = page.getByLabel("Or type it")
    await box.waitFor({ timeout: 30_000 })
    await box.fill("water ten square fourteen metres")
    await box.press("Enter")
    await page.getByRole("link", { name: "Record" }).click()
    const button = page.getByRole("button", { name: "Save a report (PDF)" })
    await button.waitFor()
    expect(asked.filter((url) => /DejaVu|makeReport/.test(url))).toEqual([])
    const [download] = await Promise.all([page.waitForEvent("download", { timeout: 60_000 }), button.click()])
    expect(download.suggestedFilename()).toBe("The village hall.pdf")
    const pdf = await readPdf(new Uint8Array(readFileSync(await download.path())))
    const water = pdf.blocks
      .filter(({ role, under }) => role === "TR" && under.startsWith("Water: "))
      .map(({ cells }) => cells[1])
    expect(water).toEqual(["Value", "water", "10 mm²", "14 m"])
  } finally {
    await context.close()
    dropProfile(profile)
  }
})
