/** Whether the page is out of sight, told also where there is no page, as in tests. */

export const isHidden = () => typeof document !== "undefined" && document.visibilityState === "hidden"

/** Begins or ends to tell of each change. */
export const watchPage = (changed: () => void, on: boolean): void => {
  if (typeof document === "undefined") return
  if (on) document.addEventListener("visibilitychange", changed)
  else document.removeEventListener("visibilitychange", changed)
}
