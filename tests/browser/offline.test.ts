/**
 * The page without any server: visited once, then opened, heard with and written in after the server is gone; and a
 * newer version that is fetched beside a job and taken at the next start.
 */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import type { Page } from "playwright-core"
import { afterEach, beforeEach, expect, test } from "vitest"
import { listKeptFiles } from "../../src/app/offline/offlineBuild"
import { dropProfile, launch, makeProfile, serveApp, storedLines } from "./openApp"

let folder: string
let profile: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "bothhands-site-"))
  profile = makeProfile()
  cpSync("dist", folder, { recursive: true })
})
afterEach(() => {
  dropProfile(profile)
  rmSync(folder, { recursive: true, force: true })
})

/** Below a folder of its own, since the page must not count on being at the top. */
const serve = () => serveApp({ base: "/site/", build: { outDir: folder }, appType: "mpa" })

const isKept = (page: Page) => page.waitForFunction(() => navigator.serviceWorker.controller !== null)
const place = (page: Page) => page.getByLabel("Where is the job?")

const startJob = async (page: Page) => {
  await place(page).fill("The village hall")
  await page.getByRole("button", { name: "Start a job" }).click()
  await page.getByLabel("Or type it").waitFor()
}

const typeEntry = async (page: Page, words: string) => {
  const before = (await storedLines(page)).length
  await page.getByLabel("Or type it").fill(words)
  await page.getByLabel("Or type it").press("Enter")
  await expect.poll(async () => (await storedLines(page)).length).toBeGreaterThan(before)
}

test("after one visit the page opens, hears and keeps an entry with the server gone", async () => {
  const site = await serve()
  const context = await launch({ profile })
  try {
    const page = context.pages()[0]!
    const faults: string[] = []
    page.on("console", (message) => {
      if (/Content Security Policy|EvalError/.test(message.text())) faults.push(message.text())
    })
    await page.goto(site.url)
    await isKept(page)
    await site.close()
    await expect(fetch(site.url)).rejects.toThrow()
    await page.reload()
    await startJob(page)
    const isListening = () => performance.getEntriesByName("bothhands.listening").length > 0
    await page.waitForFunction(isListening, null, { timeout: 60_000 })
    await typeEntry(page, "water ten square")
    const kept = await storedLines(page)
    expect(kept.some((line) => line.type === "entry")).toBe(true)
    await page.reload()
    await page.getByLabel("Or type it").waitFor()
    expect((await storedLines(page)).slice(0, kept.length)).toEqual(kept)
    expect(faults).toEqual([])
  } finally {
    await context.close()
    await site.close()
  }
})

/** Puts a newer version on the server: another title, and the worker that such a build would have. */
const publishNewer = () => {
  const before = listKeptFiles(folder).find(({ path }) => path === "index.html")!.hash
  const page = readFileSync(join(folder, "index.html"), "utf8")
  writeFileSync(join(folder, "index.html"), page.replace("<title>Bothhands", "<title>Newer Bothhands"))
  const after = listKeptFiles(folder).find(({ path }) => path === "index.html")!.hash
  const worker = readFileSync(join(folder, "serviceWorker.js"), "utf8")
  expect(worker).toContain(before)
  writeFileSync(join(folder, "serviceWorker.js"), worker.replace(before, after))
}

test("a newer version waits beside an open job, says so once, and is taken at the next start", async () => {
  const site = await serve()
  const context = await launch({ profile })
  try {
    const page = context.pages()[0]!
    await page.goto(site.url)
    await isKept(page)
    await startJob(page)
    publishNewer()
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update())
    const told = page.getByText(
      "A newer version is ready; it is used once every window of this app is closed and it is opened again.",
      { exact: true },
    )
    await told.waitFor()
    await typeEntry(page, "water ten square")
    expect(await page.title()).toBe("Bothhands")
    expect(await told.count()).toBe(1)
    const kept = await storedLines(page)
    const next = await context.newPage()
    await page.close()
    // The browser changes versions some time after the last window is gone, not at once.
    const titleAtNextStart = async () => {
      await next.goto("about:blank")
      await next.waitForTimeout(1000)
      await next.goto(site.url)
      return next.title()
    }
    await expect.poll(titleAtNextStart, { timeout: 30_000 }).toBe("Newer Bothhands")
    await next.getByLabel("Or type it").waitFor()
    expect((await storedLines(next)).slice(0, kept.length)).toEqual(kept)
  } finally {
    await context.close()
    await site.close()
  }
})
