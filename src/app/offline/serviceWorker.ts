/**
 * Answers for the server once the page has been visited, so that it opens and hears with no network at all. Built by
 * itself after the page (see `offlineBuild.ts`), which puts the list of files in: a changed file changes this script,
 * and that is what the browser notices.
 */
import { FileKeeper } from "./FileKeeper"
import type { KeptFile } from "./KeptFile"
import { isTakeOver } from "./takeOver"

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

// A newer version comes this far only when no page is open, or when the only one open has asked for it as it started.
worker.addEventListener("activate", (event) => event.waitUntil(keeper.clear().then(() => worker.clients.claim())))

worker.addEventListener("fetch", (event) => {
  const file = event.request.method === "GET" ? keeper.fileAt(event.request.url) : undefined
  // A file that is on the server alone, or a newer one than ours, still gets through.
  if (file) event.respondWith(keeper.answer(file).catch(() => fetch(event.request)))
})

const takeOver = async (answer: MessagePort | undefined) => {
  const windows = await worker.clients.matchAll({ type: "window", includeUncontrolled: true })
  const alone = windows.filter(({ url }) => url.startsWith(scope)).length <= 1
  answer?.postMessage(alone)
  if (alone) await worker.skipWaiting()
}

worker.addEventListener("message", (event) => {
  if (isTakeOver(event.data)) event.waitUntil(takeOver(event.ports[0]))
})
