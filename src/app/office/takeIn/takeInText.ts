/** A text file: a job file is merged, a transcript becomes a job of its own, and anything else is refused in plain words. */
import type { Tools } from "../../../dialogue/Tools"
import { hashOf } from "../../../record/chain"
import type { Store } from "../../../record/Store"
import { type TakenJob, takeInJob } from "../../../record/takeInJob"
import { decodeText } from "../../../speech/decodeText"
import { readTranscript, type TranscriptKind } from "../../../speech/readTranscript"
import { fileKind } from "./fileKind"
import { refusedFile, type TakenFile } from "./TakenFile"
import { takeInHeard } from "./takeInHeard"

/** What taking in needs, wherever it runs. */
export interface TakeInDesk {
  store: Store
  tools: Omit<Tools, "newId">
  now(): string
  pack: string
}

export interface FileContent {
  file: string
  bytes: Uint8Array
  /** When the file was last changed, in milliseconds since 1970. */
  changedMs: number
}

const notKnown = "This is no job file, transcript or recording that can be read here."

/** A file that begins so was meant to be a job file, however it is named and however damaged it is. */
const looksLikeJob = (text: string) => /^\s*\{"format":"bothhands job"/.test(text)

const transcriptKind = (file: string, text: string): TranscriptKind | null => {
  if (/^\uFEFF?WEBVTT/.test(text)) return "vtt"
  const kind = fileKind(file)
  return kind === "vtt" || kind === "srt" || kind === "txt" || kind === "jsonl" ? kind : null
}

const sayTaken = ({ fresh, known, copyOf, faults }: TakenJob): string => {
  const saved = faults.length > 0 ? "What could be read was saved. " : ""
  if (fresh === 0) return `${saved}Here already. Nothing was added.`
  if (copyOf)
    return `${saved}Two devices carried on with this job. This one is kept beside the other, as a second copy.`
  return known === 0 ? `${saved}Taken in.` : `${saved}Added to the job that is here.`
}

export const takeInText = async (desk: TakeInDesk, content: FileContent): Promise<TakenFile> => {
  const { file, bytes, changedMs } = content
  const text = decodeText(bytes)
  if (text === null) return refusedFile(file, notKnown)
  if (looksLikeJob(text)) {
    const taken = await takeInJob(desk.store, { name: file, text, at: desk.now() })
    if (!taken.ok) return refusedFile(file, taken.because, "job file")
    const { job, fresh, known, faults } = taken.value
    return { file, kind: "job file", job, fresh, known, faults, words: sayTaken(taken.value) }
  }
  const kind = transcriptKind(file, text)
  if (text.trim() === "") return refusedFile(file, "The file is empty.")
  if (kind === null) return refusedFile(file, notKnown)
  const faults: string[] = []
  const heards = await readTranscript(text, kind, (fault) => void faults.push(fault))
  if (!heards.ok) return refusedFile(file, heards.because, "transcript")
  const order = { file, kind: "transcript" as const, sha256: hashOf(bytes), heards: heards.value, faults, changedMs }
  return takeInHeard(desk.store, desk.tools, { ...order, at: desk.now(), pack: desk.pack })
}
