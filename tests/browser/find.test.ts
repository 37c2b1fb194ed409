/**
 * The office in a real browser: files of every kind come in, through the same ear and loop as on the command line; they
 * are found by plain words and opened by keyboard; and axe finds no fault in it, light or dark.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import AxeBuilder from "@axe-core/playwright"
import type { Browser, Page } from "playwright-core"
import { afterAll, beforeAll, expect, test } from "vitest"
import wavefile from "wavefile"
import { openEar } from "../../src/cli/openEar"
import { writeJobFile } from "../../src/record/jobFile"
import { hearWav } from "../../src/speech/hearSound"
import { bakeryRecord } from "../bakery"
import { realInterpreter } from "../realTools"
import { entry, opened, stampLines, waterReading, waterSize } from "../record/someLines"
import { recordOf } from "../recordOf"
import { launchBrowser, type ServedApp, serveApp, storedLines } from "./openApp"

let app: ServedApp
let browser: Browser
const files = mkdtempSync(join(tmpdir(), "bothhands-files-"))
const put = (name: string, content: string | Uint8Array) => {
  const path = join(files, name)
  writeFileSync(path, content)
  return path
}

beforeAll(async () => {
  app = await serveApp()
  browser = await launchBrowser()
})
afterAll(async () => {
  await browser?.close()
  await app.close()
  rmSync(files, { recursive: true })
})

const inOffice = async (work: (page: Page) => Promise<void>) => {
  const context = await browser.newContext({ viewport: { width: 1200, height: 900 } })
  try {
    const page = await context.newPage()
    await page.goto(`${app.url}#office`)
    await page.locator(".find-count").waitFor({ timeout: 30_000 })
    await work(page)
  } finally {
    await context.close()
  }
}

const takeIn = async (page: Page, paths: string[], sum: RegExp) => {
  await page.getByLabel("Take in files", { exact: true }).last().setInputFiles(paths)
  await page.locator(".take-in-done", { hasText: sum }).waitFor({ timeout: 90_000 })
}

const waterLength = entry({ kind: "length", value: 8, unit: "m", subject: "water" })
const lines = stampLines([opened, waterSize(4), waterReading(0.03), waterLength])
const job = writeJobFile(lines)
/** The same job, carried on with by another device. */
const fork = writeJobFile([...lines.slice(0, 2), { ...stampLines([waterSize(10)], "bakery", 2)[0]!, id: "phone-2" }])

/** The first seconds of the sample recording. */
const startOfSample = (seconds: number): Uint8Array => {
  const whole = new wavefile.WaveFile(readFileSync("samples/bakery.wav"))
  const samples = whole.getSamples(false, Int16Array) as unknown as Int16Array
  const cut = new wavefile.WaveFile()
  cut.fromScratch(1, 16_000, "16", samples.slice(0, seconds * 16_000))
  return cut.toBuffer()
}

test("job files, transcripts and what is neither come in, and come in once", () =>
  inOffice(async (page) => {
    const paths = [
      put("bakery.bothhands.jsonl", job),
      put("cut.jsonl", writeJobFile(stampLines([opened, waterSize(16), waterReading(0.01)], "hall")).slice(0, -150)),
      put("The bakery.vtt", readFileSync("samples/bakery.vtt", "utf8")),
      put("plan.png", "no text of ours"),
    ]
    await takeIn(page, paths, /4 files: 3 taken in, 1 not taken in, 1 with faults/)
    expect(await page.locator(".taken").textContent()).toContain("The file is cut: its end is missing.")
    const stored = await storedLines(page)
    const ofTranscript = stored.filter((line) => line.device === "file")
    expect(recordOf(ofTranscript)).toEqual(bakeryRecord.map((line) => line.replace(/, \w+$/, ", waiting")).sort())
    await page.locator(".find-count", { hasText: "3 jobs" }).waitFor()
    await page.getByRole("button", { name: "Clear this list" }).click()
    await takeIn(page, [...paths, put("fork.jsonl", fork)], /5 files: 1 taken in, 3 here already, 1 not taken in/)
    expect(await page.locator(".taken").textContent()).toContain("second copy")
    await page.locator(".find-count", { hasText: "4 jobs" }).waitFor()
    const after = await storedLines(page)
    expect(after.filter((line) => stored.some((one) => one.id === line.id))).toHaveLength(stored.length)
  }))

test("a recording is heard as on the command line, and a stopped one goes on", () =>
  inOffice(async (page) => {
    const wav = startOfSample(20)
    const path = put("talk.wav", wav)
    const ear = await openEar()
    if (!ear.ok) throw new Error(ear.because)
    ear.value.take(realInterpreter().earGrammar({}))
    const heard = hearWav(wav, ear.value)
    if (!heard.ok) throw new Error(heard.because)
    await page.getByLabel("Take in files", { exact: true }).last().setInputFiles([path])
    await page.getByRole("button", { name: "Stop", exact: true }).click()
    await page.getByText("1 file is waiting; nothing is half taken in.").waitFor()
    expect(await storedLines(page)).toEqual([])
    await page.getByRole("button", { name: "Go on" }).click()
    await page.locator(".take-in-done", { hasText: /1 file: 1 taken in/ }).waitFor({ timeout: 90_000 })
    const logged = (await storedLines(page)).flatMap((line) => (line.type === "heard" ? [line.heard.text] : []))
    const said = heard.value.map((one) => one.text)
    expect(logged.length).toBeGreaterThan(0)
    expect(said).toEqual(expect.arrayContaining(logged))
    // A recording that the browser itself has to decode goes the same way.
    await page.getByRole("button", { name: "Clear this list" }).click()
    await takeIn(page, [put("other.ogg", startOfSample(12))], /1 file: 1 taken in/)
  }))

test("jobs are found by plain words and opened by keyboard alone, and the list is as it was on coming back", () =>
  inOffice(async (page) => {
    await takeIn(
      page,
      [put("job.jsonl", job), put("b.txt", "PME\ngas ten square eight metres\n")],
      /2 files: 2 taken in/,
    )
    await page.locator(".find-count", { hasText: "2 jobs" }).waitFor()
    await page.keyboard.press("/")
    await page.locator(".find-words input:focus").waitFor()
    await page.keyboard.type("water under 10")
    await page.locator(".find-count", { hasText: "1 of 2 jobs" }).waitFor()
    expect(await page.locator(".find-chip").allInnerTexts()).toEqual(["Water: size under 10 mm²"])
    await page.keyboard.press("ArrowDown")
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe("The bakery")
    await page.keyboard.press("Enter")
    await expect.poll(() => page.url()).toContain("#office/bakery")
    await page.goBack()
    await page.locator(".find-count", { hasText: "1 of 2 jobs" }).waitFor()
    expect(await page.locator(".find-words input").inputValue()).toBe("water under 10")
  }))

test("no fault under axe, light and dark, wide and narrow", () =>
  inOffice(async (page) => {
    const expectNoFault = async (where: string) => {
      for (const colorScheme of ["light", "dark"] as const) {
        await page.emulateMedia({ colorScheme })
        const { violations } = await new AxeBuilder({ page }).analyze()
        const faults = violations.map(
          (one) => `${one.id}: ${one.nodes.map((node) => node.target.join(" ")).join("; ")}`,
        )
        expect(faults, `${where}, ${colorScheme}`).toEqual([])
      }
    }
    await expectNoFault("empty")
    await takeIn(page, [put("job.jsonl", job), put("x.png", "x")], /2 files/)
    await page.locator(".find-words input").fill("water under 10 over 7")
    await page.locator(".find-chip").waitFor()
    await expectNoFault("found")
    await page.getByRole("button", { name: "Show readings as charts" }).click()
    await page.getByText("The same as a table").click()
    await expectNoFault("charts")
    await page.getByRole("button", { name: "Show the list" }).click()
    await page.locator(".find-row").first().waitFor()
    await page.setViewportSize({ width: 390, height: 844 })
    await expectNoFault("found on a phone")
  }))
