/**
 * Pictures of every screen, for looking at: phone and desktop; light, dark and strong contrast; and phones at twice the
 * text size. `npm run bench -- shots FOLDER` prints the name of each file it writes.
 */
import { mkdirSync } from "node:fs"
import { join, resolve } from "node:path"
import type { BrowserContext } from "playwright-core"
import { createServer } from "vite"
import { dropProfile, launch, makeProfile } from "../browser/openApp"

/** State and screen; the file is named after both. */
const screens: readonly (readonly [view: string, screen: string])[] = [
  ["opening", ""],
  ["start", ""],
  ["startFirst", ""],
  ["startTrouble", ""],
  ["emptyJob", "now"],
  ["readingWaits", "now"],
  ["readingWaits", "picture"],
  ["warningOpen", "now"],
  ["warningOpen", "picture"],
  ["warningOpen", "record"],
  ["warningOpen", "findings"],
  ["busyJob", "now"],
  ["busyJob", "findings"],
  ["signOffAsked", "sign-off"],
  ["signedOff", "sign-off"],
  ["warningOpen", "settings"],
  ["start", "settings"],
  ["start", "lesson"],
  ["start", "learn"],
  ["alarm", "now"],
]

const sizes = {
  phone: { width: 390, height: 844 },
  desktop: { width: 1440, height: 900 },
} as const

const serveGallery = async () => {
  const configFile = resolve("vite.config.ts")
  const server = await createServer({ configFile, root: resolve("."), server: { port: 0 }, logLevel: "error" })
  await server.listen()
  return { url: `${server.resolvedUrls!.local[0]}tests/app/gallery.html`, close: () => server.close() }
}

const shoot = async (context: BrowserContext, url: string, file: string) => {
  const page = context.pages()[0]!
  await page.goto("about:blank")
  await page.goto(url)
  await page.locator(url.includes("view=opening") ? ".opening" : ".job, .start").waitFor()
  await page.waitForTimeout(150)
  await page.screenshot({ path: file })
  console.log(file)
}

/** A folder, and the screens to keep to, such as `busyJob-findings`. */
export const run = async ([folder, ...only]: readonly string[] = []): Promise<void> => {
  if (!folder) return console.log("Name a folder for the pictures: npm run bench -- shots FOLDER [SCREEN …]")
  const wanted = screens.filter((one) => only.length === 0 || only.includes(one.filter(Boolean).join("-")))
  mkdirSync(folder, { recursive: true })
  const gallery = await serveGallery()
  try {
    for (const [size, viewport] of Object.entries(sizes)) {
      const profile = makeProfile()
      const context = await launch({ profile, viewport })
      for (const [view, screen] of wanted) {
        const looks = size === "phone" ? ["light", "dark", "contrast", "large"] : ["light", "dark", "contrast"]
        for (const look of looks) {
          const asked = look === "large" ? "theme=dark&text=200" : `theme=${look}`
          const name = [view, screen, size, look].filter(Boolean).join("-")
          await shoot(context, `${gallery.url}?view=${view}&${asked}#${screen}`, join(folder, `${name}.png`))
        }
      }
      await context.close()
      dropProfile(profile)
    }
  } finally {
    await gallery.close()
  }
}
