/**
 * Tries mutants one after another against the tests of the rules, in this process: one file is served with its change,
 * everything is loaded afresh, and the first test that fails ends it.
 */
import { resolve } from "node:path"
import { createServer, createServerModuleRunner, type Plugin } from "vite"
import type { Mutant } from "./Mutant"

/** Quick ones first, so that most mutants end early. */
export const testFiles = [
  "edges",
  "collectedValues",
  "examples",
  "shown",
  "size",
  "circuits",
  "jobs",
  "checker",
  "band",
  "tradeFacts",
  "memory",
  "packs",
  "spoken",
  "crossChecks",
] as const

const quickTests = "/tests/rules/mutation/quickTests.ts"

export interface Trier {
  /** Whether some test fails with this change, or without any. */
  isNoticed(mutant: Mutant | null): Promise<boolean>
  close(): Promise<void>
}

/** Tries against these of the files; all of them unless told otherwise. */
export const createTrier = async (files: readonly string[] = testFiles): Promise<Trier> => {
  let current: Mutant | null = null
  const serve: Plugin = {
    name: "serve-the-mutant",
    enforce: "pre",
    load: (id) => (current && id === resolve(current.file) ? current.text : undefined),
    transform: (code, id) =>
      id.endsWith(".test.ts") ? code.replace('from "vitest"', `from "${quickTests}"`) : undefined,
  }
  const server = await createServer({
    configFile: false,
    root: resolve("."),
    logLevel: "silent",
    appType: "custom",
    server: { middlewareMode: true, ws: false, watch: null },
    optimizeDeps: { noDiscovery: true },
    plugins: [serve],
  })
  const { ssr } = server.environments
  const runner = createServerModuleRunner(ssr, { hmr: false })

  const forget = (file: string) => {
    for (const module of ssr.moduleGraph.getModulesByFile(resolve(file)) ?? []) ssr.moduleGraph.invalidateModule(module)
  }

  const isFailing = async (): Promise<boolean> => {
    runner.clearCache()
    try {
      const { takeTests } = await runner.import(quickTests)
      for (const name of files) {
        await runner.import(`/tests/rules/${name}.test.ts`)
        for (const run of takeTests()) await run()
      }
      return false
    } catch {
      return true
    }
  }

  return {
    async isNoticed(mutant) {
      if (current) forget(current.file)
      current = mutant
      if (mutant) forget(mutant.file)
      return isFailing()
    },
    async close() {
      await runner.close()
      await server.close()
    },
  }
}
