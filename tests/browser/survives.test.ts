/** What was accepted is still there after the browser is killed in the middle of a job, at moments nobody chose. */
import { afterAll, beforeAll, expect, test } from "vitest"
import { LogLine } from "../../src/record/LogLine"
import { killBrowser } from "./killBrowser"
import { dropProfile, launch, makeProfile, type ServedApp, serveApp, storedLines } from "./openApp"

let app: ServedApp
beforeAll(async () => {
  app = await serveApp()
})
afterAll(() => app.close())

/** Kills of one run; `KILLS=1000` makes a night of it. */
const kills = Number(process.env.KILLS ?? 6)
/** Kills of one job, so that a long run is about kills and not about one endless log. */
const killsOfJob = 50
const waitMs = 120_000

const sentences = [
  "water ten square",
  "fourteen metres",
  "pipe cleaned",
  "clamp fitted",
  "label fitted",
  "undo",
  "gas six square",
]

/** Opens the page, checks what the last kill left, types for a while and kills again. Gives the lines known by then. */
const typeAndKill = async (profile: string, kill: number, known: LogLine[]): Promise<LogLine[]> => {
  const context = await launch({ profile })
  const page = context.pages()[0]!
  await page.goto(app.url, { timeout: waitMs })
  if (known.length === 0) {
    await page.getByLabel("Where is the job?").fill("The village hall")
    await page.getByRole("button", { name: "Start a job" }).click()
  }
  const box = page.getByLabel("Or type it")
  await box.waitFor({ timeout: waitMs })
  const found = await storedLines(page)
  // Every line seen before the kill is there again, unchanged, and no line is cut.
  expect(found.slice(0, known.length)).toEqual(known)
  expect(found.map((line) => line.seq)).toEqual(found.map((_, index) => index))
  for (const line of found.slice(known.length)) expect(LogLine.safeParse(line).error).toBeUndefined()
  let seen = found
  const until = Date.now() + 150 + ((kill * 7919) % 900)
  for (let n = 0; Date.now() < until; n++) {
    await box.fill(sentences[(kill + n) % sentences.length]!)
    await box.press("Enter")
    // What is on the screen as read back must be on disk already: this is what the next start is held to.
    seen = await storedLines(page)
  }
  expect(killBrowser(profile)).toBeGreaterThan(0)
  await context.close().catch(() => {})
  return seen
}

test(`${kills} kills lose no line that was read back`, { timeout: Math.max(180_000, kills * waitMs) }, async () => {
  for (let kill = 0; kill < kills; ) {
    const profile = makeProfile()
    let known: LogLine[] = []
    try {
      for (const end = Math.min(kills, kill + killsOfJob); kill < end; kill++)
        known = await typeAndKill(profile, kill, known)
      expect(known.length).toBeGreaterThan(Math.min(kills, killsOfJob))
    } finally {
      dropProfile(profile)
    }
  }
})

test("a refused microphone is one plain notice, and the job goes on by typing", async () => {
  const profile = makeProfile()
  const context = await launch({ profile, allowMicrophone: false })
  try {
    const page = context.pages()[0]!
    await page.goto(app.url)
    await page.getByLabel("Where is the job?").fill("The village hall")
    await page.getByRole("button", { name: "Start a job" }).click()
    await page
      .getByText(/microphone/i)
      .first()
      .waitFor({ timeout: 60_000 })
    await page.getByLabel("Or type it").fill("water ten square")
    await page.getByLabel("Or type it").press("Enter")
    await expect.poll(async () => (await storedLines(page)).filter((line) => line.type === "entry").length).toBe(2)
  } finally {
    await context.close()
    dropProfile(profile)
  }
})
