/**
 * Why the browser's recogniser was left for good on this device. It counts for one version of the browser: a newer one may
 * do better, and the worker may have it tried again.
 */
const place = "bothhands.failedEar"

export const failedEar = {
  read: (): string | null => {
    try {
      const found = JSON.parse(localStorage.getItem(place) ?? "null") as { agent?: unknown; because?: unknown } | null
      return found?.agent === navigator.userAgent && typeof found.because === "string" ? found.because : null
    } catch {
      return null
    }
  },
  keep: (because: string): void => {
    try {
      localStorage.setItem(place, JSON.stringify({ agent: navigator.userAgent, because }))
    } catch {
      // Where nothing can be kept, it fails once more in the next visit.
    }
  },
  forget: (): void => {
    try {
      localStorage.removeItem(place)
    } catch {
      // Where nothing can be kept, there is nothing to forget.
    }
  },
}
