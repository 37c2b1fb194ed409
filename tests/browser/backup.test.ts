/**
 * The copies in a folder, in a real browser: its own private folder (OPFS, File System Standard) stands in for one that the
 * worker chose, as nobody can tap the browser's dialog in a test. Writing, replacing and remembering are the browser's own.
 */
import type { Page } from "playwright-core"
import { afterAll, beforeAll, expect, test } from "vitest"
import { readJobFile } from "../../src/record/jobFile"
import { dropProfile, launch, makeProfile, type ServedApp, serveApp, storedLines } from "./openApp"

let app: ServedApp
beforeAll(async () => {
  app = await serveApp()
})
afterAll(() => app.close())

const filesInFolder = (page: Page): Promise<string[]> =>
  page.evaluate(async () => {
    const root = await navigator.storage.getDirectory()
    const folder = await root.getDirectoryHandle("card", { create: true })
    const texts: string[] = []
    // @ts-expect-error: the library of types has no iteration over a folder.
    for await (const entry of folder.values()) texts.push(await (await entry.getFile()).text())
    return texts
  })

/** The lines of the only copy, or none while there is none. */
const copied = async (page: Page) => {
  const [text] = await filesInFolder(page)
  const read = text ? readJobFile(text) : null
  return read?.ok && read.value.faults.length === 0 ? read.value.lines : []
}

const isCopyWhole = async (page: Page) => {
  const stored = await storedLines(page)
  await expect.poll(async () => (await copied(page)).length, { timeout: 30_000 }).toBe(stored.length)
  expect(await copied(page)).toEqual(stored)
}

const say = async (page: Page, words: string, entries: number) => {
  await page.getByLabel("Or type it").fill(words)
  await page.getByLabel("Or type it").press("Enter")
  const entryCount = async () => (await storedLines(page)).filter((line) => line.type === "entry").length
  await expect.poll(entryCount, { timeout: 30_000 }).toBe(entries)
}

test("each line is copied to the chosen folder by itself, also after the page is opened again", async () => {
  const profile = makeProfile()
  const context = await launch({ profile, allowMicrophone: false })
  const page = context.pages()[0]!
  await page.addInitScript(() => {
    const pick = async () => (await navigator.storage.getDirectory()).getDirectoryHandle("card", { create: true })
    Object.assign(window, { showDirectoryPicker: pick })
  })
  try {
    await page.goto(`${app.url}#settings`)
    await page.getByRole("button", { name: "Choose a folder" }).click()
    await page.getByText("Copies go to “card”").waitFor()
    await page.goto(`${app.url}#`)
    await page.getByLabel("Where is the job?").fill("The village hall")
    await page.getByRole("button", { name: "Start a job" }).click()
    await page.getByLabel("Or type it").waitFor({ timeout: 60_000 })
    await say(page, "water ten square", 2)
    await isCopyWhole(page)
    await page.reload()
    await page.getByLabel("Or type it").waitFor({ timeout: 60_000 })
    await say(page, "fourteen metres", 3)
    await isCopyWhole(page)
  } finally {
    await context.close()
    dropProfile(profile)
  }
})

test("a browser without folders says so, and offers saving by hand", async () => {
  const profile = makeProfile()
  const context = await launch({ profile, allowMicrophone: false })
  const page = context.pages()[0]!
  await page.addInitScript(() => Object.assign(window, { showDirectoryPicker: undefined }))
  try {
    await page.goto(`${app.url}#settings`)
    await page.getByText("This browser lets no page write to a folder by itself.").waitFor({ timeout: 60_000 })
    expect(await page.getByRole("button", { name: "Save all jobs as one file" }).isVisible()).toBe(true)
    expect(await page.getByRole("button", { name: "Choose a folder" }).count()).toBe(0)
  } finally {
    await context.close()
    dropProfile(profile)
  }
})
