/**
 * Answers for the server once the page has been visited, so that it opens and hears with no network at all. Built by
 * itself after the page (see `offlineBuild.ts`), which puts the list of files in: a changed file changes this script,
 * and that is what the browser notices.
 */
import { FileKeeper } from "./FileKeeper"
import type { KeptFile } from "./KeptFile"

declare const keptFiles: readonly KeptFile[]

const worker = self as unknown as ServiceWorkerGlobalScope
const { scope } = worker.registration
const keeper = new FileKeeper({
  files: keptFiles,
  scope,
  caches,
  fetchFile: (address, init) => fetch(address, init),
})

worker.addEventListener("install", (event) => event.waitUntil(keeper.fill()))

// A newer version comes this far only once no window of the app is open.
worker.addEventListener("activate", (event) => event.waitUntil(keeper.clear().then(() => worker.clients.claim())))

worker.addEventListener("fetch", (event) => {
  const file = event.request.method === "GET" ? keeper.fileAt(event.request.url) : undefined
  // A file that is on the server alone, or a newer one than ours, still gets through.
  if (file) event.respondWith(keeper.answer(file).catch(() => fetch(event.request)))
})
