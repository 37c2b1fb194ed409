/** What a file may hold, by its name; what it does hold shows when it is read. */
import { type TranscriptKind, transcriptKinds } from "../../../speech/readTranscript"

export type FileKind = TranscriptKind | "wav" | "sound" | "zip" | "not known"

/** Recordings other than WAV that browsers decode, each browser its own choice of them. */
const soundEndings = [
  "mp3",
  "m4a",
  "aac",
  "ogg",
  "oga",
  "opus",
  "flac",
  "webm",
  "mp4",
  "caf",
  "aif",
  "aiff",
  "amr",
  "3gp",
]

export const fileKind = (name: string): FileKind => {
  const ending = /\.([a-z0-9]+)$/i.exec(name)?.[1]?.toLowerCase() ?? ""
  if (ending === "wav" || ending === "zip") return ending
  if (ending === "text") return "txt"
  if (soundEndings.includes(ending)) return "sound"
  return transcriptKinds.find((kind) => kind === ending) ?? "not known"
}

/** The name without its folders and endings, as a place for a job that says none. */
export const placeOfName = (name: string): string => {
  const bare = name.replace(/^.*[\\/]/, "").replace(/(\.[a-z0-9]{1,9})+$/i, "")
  return (
    bare
      .replace(/[_\s]+/g, " ")
      .trim()
      .slice(0, 200) || "A file without a name"
  )
}
