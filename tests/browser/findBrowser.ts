/**
 * A Chromium, Chrome or Edge to test with: one that is installed, else one from the platform's own package manager where
 * that needs no asking, else a plain line that says what to run.
 */
import { execFileSync } from "node:child_process"
import { existsSync } from "node:fs"
import { platform } from "node:process"

const places: Partial<Record<NodeJS.Platform, string[]>> = {
  linux: [
    "/usr/bin/chromium",
    "/usr/bin/chromium-browser",
    "/usr/bin/google-chrome",
    "/usr/bin/google-chrome-stable",
    "/usr/bin/microsoft-edge",
    "/snap/bin/chromium",
  ],
  darwin: [
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
  ],
  win32: [
    "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
    "C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe",
    "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
  ],
}

const installed = (): string | undefined =>
  [process.env.BROWSER_PATH, ...(places[platform] ?? [])].find((path) => path && existsSync(path))

const canUseApt = () => platform === "linux" && existsSync("/usr/bin/apt-get") && process.getuid?.() === 0

/** Path of a browser to drive. Throws one plain line where there is none and none can be had unasked. */
export const findBrowser = (): string => {
  const found = installed()
  if (found) return found
  if (canUseApt()) {
    execFileSync("apt-get", ["update", "-qq"], { stdio: "inherit" })
    execFileSync("apt-get", ["install", "-y", "-qq", "--no-install-recommends", "chromium"], {
      stdio: ["ignore", "ignore", "inherit"],
      env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
    })
    const fresh = installed()
    if (fresh) return fresh
  }
  const hint = platform === "linux" ? "sudo apt-get install chromium" : "install Chrome, Chromium or Edge"
  throw new Error(`The browser tests need Chromium, Chrome or Edge and found none: ${hint}, or set BROWSER_PATH.`)
}
