/**
 * Cues as a WebVTT file, to the millisecond. What may not stand in a cue is written so that readers give it back; only
 * line breaks become spaces, since an empty line would end the cue.
 */

export interface Cue {
  /** Seconds from the start of the recording. */
  start: number
  end: number
  text: string
  /** Who says it, where that matters. */
  speaker?: string
}

/** The file's text. `notes` are for whoever opens it in an editor; players skip them. */
export const writeCues = (cues: readonly Cue[], notes: readonly string[] = []): string => {
  const blocks = cues.map(({ start, end, text, speaker }, n) => {
    const name = speaker === undefined ? "" : `<v ${escapeText(speaker)}>`
    return `${n + 1}\n${writeClock(start)} --> ${writeClock(end)}\n${name}${escapeText(text)}`
  })
  return `${["WEBVTT", ...notes.map((note) => `NOTE ${escapeText(note)}`), ...blocks].join("\n\n")}\n`
}

/** Text as a cue may hold it. */
export const escapeText = (text: string) =>
  text
    .replaceAll(/[\r\n]+/g, " ")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")

/** Seconds as WebVTT writes a time. */
export const writeClock = (seconds: number): string => {
  const ms = Math.round(seconds * 1000)
  const pad = (count: number, width: number) => String(Math.floor(count)).padStart(width, "0")
  return `${pad(ms / 3_600_000, 2)}:${pad((ms / 60_000) % 60, 2)}:${pad((ms / 1000) % 60, 2)}.${pad(ms % 1000, 3)}`
}
