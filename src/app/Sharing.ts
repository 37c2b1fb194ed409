/**
 * Hands files to another app through the device's share sheet. Browsers let only some kinds through, judged by the end of
 * the name, so a job file goes as plain text where its own kind is refused; it is read by its content anyway. They also
 * ask for a fresh tap, which may be over by the time a report is made: then the file is kept for the next one.
 */

/** `closed`: the sheet was shut without choosing; `press again`: the file is made, and a new tap hands it over. */
export type Shared = "shared" | "closed" | "press again" | "refused"

/** What can be shared of the job in hand. */
export type SharedFile = "job file" | "report"

const isTaken = (file: File): boolean => navigator.canShare?.({ files: [file] }) === true

/** Whether this browser hands files to other apps at all. */
export const canShareFiles = (): boolean =>
  typeof navigator.share === "function" && isTaken(new File(["-"], "probe.txt", { type: "text/plain" }))

/** The file in a kind that the browser lets through, or null. */
const letThrough = (file: File): File | null => {
  if (isTaken(file)) return file
  const asText = new File([file], `${file.name}.txt`, { type: "text/plain" })
  return file.type !== "application/pdf" && isTaken(asText) ? asText : null
}

export class Sharing {
  private ready: { key: string; file: File } | null = null

  /** `key` is the same as long as `make` would give the same file. Rejects where the file cannot be made. */
  async share(key: string, make: () => Promise<File>): Promise<Shared> {
    if (this.ready?.key !== key) this.ready = { key, file: await make() }
    const file = letThrough(this.ready.file)
    if (!file) return "refused"
    try {
      await navigator.share({ files: [file] })
      return "shared"
    } catch (error) {
      const { name } = error as Error
      if (name === "AbortError") return "closed"
      // A tap that is too long ago is refused in the same words as a file that may never go.
      return name === "NotAllowedError" && navigator.userActivation?.isActive === false ? "press again" : "refused"
    }
  }
}
