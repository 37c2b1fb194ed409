/**
 * The build's part in offline use: the manifest with its pictures under addresses that never change, and, once all files
 * are written, the service worker with the list of them. Runs in Node, never in the page.
 */
import { createHash } from "node:crypto"
import { readdirSync, readFileSync, writeFileSync } from "node:fs"
import { join, relative, sep } from "node:path"
import { fileURLToPath } from "node:url"
import { build, type Plugin } from "vite"
import type { KeptFile } from "./KeptFile"

const app = fileURLToPath(new URL("../", import.meta.url))
const workerName = "serviceWorker.js"

/** Takes away a worker that an earlier build left at the development server's address, where it would show that build. */
const leavingWorker = `self.addEventListener("install", () => self.skipWaiting())
self.addEventListener("activate", async () => {
  await self.registration.unregister()
  for (const page of await self.clients.matchAll()) page.navigate(page.url)
})`

/** Every file of a built folder but the worker itself; the page first, the large packs last. */
export const listKeptFiles = (folder: string): KeptFile[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((file) => ({ path: relative(folder, file).split(sep).join("/"), content: readFileSync(file) }))
    .filter(({ path }) => path !== workerName && !path.endsWith(".map"))
    .sort((a, b) => a.content.length - b.content.length)
    .map(({ path, content }) => ({
      path,
      hash: createHash("sha256").update(content).digest("hex"),
      kept: path.startsWith("samples/") ? "use" : "start",
    }))

const fixedAddresses = (): Plugin => ({
  name: "bothhands-manifest",
  apply: "build",
  generateBundle() {
    const pictures = readdirSync(join(app, "icons")).map((name) => `icons/${name}`)
    for (const fileName of ["bothhands.webmanifest", ...pictures])
      this.emitFile({ type: "asset", fileName, source: readFileSync(join(app, fileName)) })
  },
})

const workerLast = (): Plugin => {
  let folder = ""
  return {
    name: "bothhands-service-worker",
    apply: "build",
    configResolved: ({ build, root }) => {
      folder = join(root, relative(root, build.outDir))
    },
    async closeBundle() {
      const built = await build({
        configFile: false,
        root: app,
        logLevel: "error",
        publicDir: false,
        define: { keptFiles: JSON.stringify(listKeptFiles(folder)) },
        build: {
          target: "es2022",
          write: false,
          rolldownOptions: { input: join(app, "offline/serviceWorker.ts"), output: { format: "iife" } },
        },
      })
      const [output] = [built].flat()
      if (!output || !("output" in output)) throw new Error("The service worker was not built")
      writeFileSync(join(folder, workerName), output.output[0].code)
    },
  }
}

const noWorkerHere = (): Plugin => ({
  name: "bothhands-no-service-worker",
  apply: "serve",
  configureServer: ({ middlewares }) => {
    middlewares.use(`/${workerName}`, (_request, response) => {
      response.setHeader("content-type", "text/javascript").end(leavingWorker)
    })
  },
})

export const offlineBuild = (): Plugin[] => [fixedAddresses(), workerLast(), noWorkerHere()]
