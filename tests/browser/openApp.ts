/** The built app in a real browser, with a recording in place of the microphone and a profile that outlives the browser. */
import { mkdtempSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join, resolve } from "node:path"
import { type Browser, type BrowserContext, chromium, type Page } from "playwright-core"
import { type InlineConfig, preview } from "vite"
import type { LogLine } from "../../src/record/LogLine"
import { findBrowser } from "./findBrowser"

export interface ServedApp {
  url: string
  close(): Promise<void>
}

/** Serves what `npm run build` made, or what `more` says, on a free port. */
export const serveApp = async (more: InlineConfig = {}): Promise<ServedApp> => {
  const configFile = resolve("vite.config.ts")
  const server = await preview({ configFile, preview: { port: 0 }, logLevel: "error", ...more })
  const url = server.resolvedUrls?.local[0]
  if (!url) throw new Error("The preview server gave no address")
  return { url, close: () => server.close() }
}

export const makeProfile = () => mkdtempSync(join(tmpdir(), "bothhands-profile-"))
export const dropProfile = (profile: string) => rmSync(profile, { recursive: true, force: true, maxRetries: 5 })

const quietFlags = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--autoplay-policy=no-user-gesture-required",
]

export interface BrowserOrder {
  profile: string
  /** A WAV file that plays once into the microphone; without it the microphone is silent noise of the browser's own. */
  recording?: string
  /** Whether the browser lets the page have the microphone. */
  allowMicrophone?: boolean
  viewport?: { width: number; height: number }
  colorScheme?: "light" | "dark"
}

export const launch = async (order: BrowserOrder): Promise<BrowserContext> => {
  const { profile, recording, allowMicrophone = true, viewport = { width: 390, height: 844 } } = order
  const fake = allowMicrophone
    ? ["--use-fake-ui-for-media-stream", "--use-fake-device-for-media-stream"]
    : ["--deny-permission-prompts"]
  const sound = recording ? [`--use-file-for-fake-audio-capture=${resolve(recording)}%noloop`] : []
  return chromium.launchPersistentContext(profile, {
    executablePath: findBrowser(),
    headless: true,
    args: [...quietFlags, ...fake, ...sound],
    viewport,
    ...(order.colorScheme && { colorScheme: order.colorScheme }),
  })
}

/** One browser for many tests: each opens a context of its own in it, which starts empty and costs no new browser. */
export const launchBrowser = (): Promise<Browser> =>
  chromium.launch({ executablePath: findBrowser(), headless: true, args: quietFlags })

/** Every line in the page's own database, in the order of each job's log. */
export const storedLines = (page: Page): Promise<LogLine[]> =>
  page.evaluate(
    () =>
      new Promise<LogLine[]>((fulfil, fail) => {
        const opening = indexedDB.open("bothhands")
        opening.onerror = () => fail(opening.error)
        opening.onsuccess = () => {
          const database = opening.result
          if (!database.objectStoreNames.contains("lines")) {
            database.close()
            fulfil([])
            return
          }
          const all = database.transaction("lines").objectStore("lines").getAll()
          all.onsuccess = () => {
            database.close()
            fulfil((all.result as LogLine[]).sort((a, b) => a.seq - b.seq))
          }
        }
      }),
  )
