/** A device that runs full in the middle of a job: said in plain words, nothing accepted lost, and it goes on with room. */
import { afterAll, beforeAll, expect, test } from "vitest"
import { dropProfile, launch, makeProfile, type ServedApp, serveApp, storedLines } from "./openApp"

let app: ServedApp
beforeAll(async () => {
  app = await serveApp()
})
afterAll(() => app.close())

test("a full device refuses, says so and keeps all that was accepted", async () => {
  const profile = makeProfile()
  const context = await launch({ profile })
  try {
    const page = context.pages()[0]!
    await page.goto(app.url)
    await page.getByLabel("Where is the job?").fill("The village hall")
    await page.getByRole("button", { name: "Start a job" }).click()
    const box = page.getByLabel("Or type it")
    const type = async (words: string) => {
      await box.fill(words)
      await box.press("Enter")
    }
    await type("water ten square")
    await page.getByText("10 mm²").first().waitFor()
    const before = await storedLines(page)

    // What the browser says of a full disk, at the very call that would write.
    await page.evaluate(() => {
      const kept = IDBObjectStore.prototype.add
      IDBObjectStore.prototype.add = () => {
        throw new DOMException("full", "QuotaExceededError")
      }
      Object.assign(globalThis, {
        makeRoom: () => {
          IDBObjectStore.prototype.add = kept
        },
      })
    })
    await type("fourteen metres")
    await page.getByText("The storage of this device is full.", { exact: false }).first().waitFor()
    expect(await storedLines(page)).toEqual(before)
    expect(await page.getByText("14 m", { exact: true }).count()).toBe(0)

    await page.evaluate(() => (globalThis as unknown as { makeRoom(): void }).makeRoom())
    await type("fourteen metres")
    await page.getByText("14 m", { exact: true }).first().waitFor()
    expect((await storedLines(page)).slice(0, before.length)).toEqual(before)
  } finally {
    await context.close()
    dropProfile(profile)
  }
})
