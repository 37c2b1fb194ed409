/** One file for building, serving and testing. The page lives in src/app; the ear pack is served from .ear. */
import { fileURLToPath } from "node:url"
import react from "@vitejs/plugin-react"
import { defineConfig } from "vitest/config"
import { offlineBuild } from "./src/app/offline/offlineBuild.ts"
import { rulesVersion } from "./src/app/rulesVersion.ts"
import { ClosingLine } from "./tests/closingLine.ts"

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url))

const shapes = /src\/(app\/zodWithoutEval|facts\/(Fact|Heard|Interpretation|Item|Quantity)|record\/LogLine)\.ts$/

export default defineConfig({
  root: here("src/app"),
  base: "./",
  publicDir: here(".ear"),
  define: { "import.meta.env.VITE_RULES": JSON.stringify(rulesVersion()) },
  plugins: [react(), offlineBuild()],
  build: {
    outDir: here("dist"),
    emptyOutDir: true,
    target: "es2022",
    // Shapes that the start page and every later screen read: as one file they are smaller than as six, and zod is told
    // of the page's policy before the first of them is made.
    rolldownOptions: { output: { codeSplitting: { groups: [{ name: "shapes", test: shapes }] } } },
  },
  worker: { format: "es" },
  server: { port: 4173, fs: { allow: [here(".")] } },
  preview: { port: 4173 },
  test: {
    root: here("."),
    reporters: ["default", new ClosingLine()],
    // One after the other, so that browsers are not killed beside the ear. Only the recording that is played at its own
    // pace into a microphone, and so mostly waits, may run beside the ear's tests, each in a run of its own.
    projects: [
      {
        extends: true,
        test: {
          name: "unit",
          include: ["tests/**/*.test.{ts,tsx}"],
          exclude: ["tests/audio/**", "tests/browser/**"],
          // Some seconds on an idle machine; a busy one may take several times as long and finds no fault by it.
          testTimeout: 30_000,
          sequence: { groupOrder: 0 },
        },
      },
      {
        extends: true,
        test: {
          name: "audio",
          include: ["tests/audio/**/*.test.ts"],
          testTimeout: 240_000,
          sequence: { groupOrder: 1 },
        },
      },
      {
        extends: true,
        test: {
          name: "browser",
          include: ["tests/browser/**/*.test.ts"],
          exclude: ["tests/browser/sampleJob.test.ts"],
          testTimeout: 180_000,
          hookTimeout: 60_000,
          sequence: { groupOrder: 2 },
        },
      },
      {
        extends: true,
        test: {
          name: "spoken",
          include: ["tests/browser/sampleJob.test.ts"],
          testTimeout: 420_000,
          hookTimeout: 60_000,
          sequence: { groupOrder: 3 },
        },
      },
    ],
  },
})
