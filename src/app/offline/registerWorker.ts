/** Has the browser start the service worker and look for a newer version, and tells what comes of it. */

export interface WorkerHooks {
  /** A newer version is on this device and waits for the next start. */
  newerReady(): void
  /** The first visit could not be kept for use without a network. */
  notKept(): void
}

export const registerWorker = async (container: ServiceWorkerContainer, hooks: WorkerHooks): Promise<void> => {
  const watch = (worker: ServiceWorker | null) =>
    worker?.addEventListener("statechange", () => {
      if (worker.state === "installed" && container.controller) hooks.newerReady()
      if (worker.state === "redundant" && !container.controller) hooks.notKept()
    })
  try {
    const registration = await container.register("./serviceWorker.js", { updateViaCache: "none" })
    if (registration.waiting && container.controller) hooks.newerReady()
    watch(registration.installing)
    registration.addEventListener("updatefound", () => watch(registration.installing))
  } catch {
    // With no network the newest version cannot be looked for, which is no trouble once one is here.
    if (!container.controller) hooks.notKept()
  }
}
