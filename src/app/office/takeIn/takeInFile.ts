/** Any file, by what it is: text, sound, or a zip file of such. Runs in a worker, and in tests without one. */
import type { Outcome } from "../../../facts/Outcome"
import { hashOf } from "../../../record/chain"
import { hearSound } from "../../../speech/hearSound"
import { readWav, type Sound } from "../../../speech/readWav"
import type { Recogniser } from "../../../speech/recogniser"
import { fileKind } from "./fileKind"
import { keepRecorded, type RecordingClips, stretchOf } from "./keepRecorded"
import { refusedFile, type TakenFile } from "./TakenFile"
import { takeInHeard } from "./takeInHeard"
import { type FileContent, type TakeInDesk, takeInText } from "./takeInText"

export interface TakeInTools extends TakeInDesk {
  /** The offline ear, ready for what may be said; opened when the first recording comes. */
  openEar(): Promise<Outcome<Recogniser>>
  /** Is told how much of a file is done, 0 to 1. */
  told(part: number): void
  /** Where the sound of recordings goes; null where none is kept. */
  clips: RecordingClips | null
}

/** What a zip file may hold when it is unpacked, so that a small one cannot fill the memory. */
const mostUnpacked = 1024 * 1024 * 1024

const takeInSound = async (desk: TakeInTools, content: FileContent, sound: Outcome<Sound>): Promise<TakenFile> => {
  const { file, bytes, changedMs } = content
  if (!sound.ok) return refusedFile(file, `It could not be heard: ${sound.because}.`, "recording")
  const ear = await desk.openEar()
  if (!ear.ok) return refusedFile(file, ear.because, "recording")
  const seconds = sound.value.samples.length / sound.value.rateHz
  let count = 0
  const stretches = new Map<string, ReturnType<typeof stretchOf>>()
  const heards = hearSound(sound.value, ear.value, {
    newId: () => `heard-${++count}`,
    told: (done) => desk.told(done / seconds),
    sound: (heard, its) => stretches.set(heard, stretchOf(its)),
  })
  const order = { file, kind: "recording" as const, sha256: hashOf(bytes), heards, changedMs }
  const taken = await takeInHeard(desk.store, desk.tools, { ...order, at: desk.now(), pack: desk.pack })
  return keepSound(desk, taken, sound.value, stretches)
}

/** The sound of what became lines of a new job, where the office keeps sound. */
const keepSound = async (
  desk: TakeInTools,
  taken: TakenFile,
  recording: Sound,
  stretches: Map<string, ReturnType<typeof stretchOf>>,
): Promise<TakenFile> => {
  if (!desk.clips || taken.job === null || taken.fresh === 0) return taken
  const { lines } = await desk.store.read(taken.job)
  const inLog = new Set(lines.flatMap((line) => (line.type === "heard" ? [line.heard.id] : [])))
  for (const heard of stretches.keys()) if (!inLog.has(heard)) stretches.delete(heard)
  const kept = await keepRecorded(desk.clips, { job: taken.job, at: desk.now(), recording, stretches })
  const words = kept.ok ? "Its sound is kept on this device." : `Not all of its sound was kept: ${kept.because}`
  return { ...taken, words: `${taken.words} ${words}` }
}

const takeInZip = async (desk: TakeInTools, { file, bytes, changedMs }: FileContent): Promise<TakenFile[]> => {
  const { unzipSync } = await import("fflate")
  let unpacked = 0
  try {
    const files = unzipSync(bytes, {
      filter: ({ name, originalSize }) => {
        unpacked += originalSize
        return unpacked <= mostUnpacked && !name.endsWith("/") && fileKind(name) !== "zip"
      },
    })
    const names = Object.keys(files)
    if (names.length === 0) return [refusedFile(file, "There is no file in it that can be read here.")]
    const taken: TakenFile[] = []
    for (const [index, name] of names.entries()) {
      const inner = { file: `${file}/${name}`, bytes: files[name]!, changedMs }
      taken.push(...(await takeInFile(desk, inner)))
      desk.told((index + 1) / names.length)
    }
    if (unpacked > mostUnpacked) taken.push(refusedFile(file, "It holds more than 1 GB. The rest was left out."))
    return taken
  } catch {
    return [refusedFile(file, "The zip file could not be opened.")]
  }
}

/** `sound` is what the browser made of a recording that is no WAV file. One file gives one answer, a zip file several. */
export const takeInFile = async (
  desk: TakeInTools,
  content: FileContent,
  sound?: Outcome<Sound>,
): Promise<TakenFile[]> => {
  const kind = fileKind(content.file)
  if (kind === "zip") return takeInZip(desk, content)
  if (kind === "wav") return [await takeInSound(desk, content, readWav(content.bytes))]
  if (kind !== "sound") return [await takeInText(desk, content)]
  if (sound) return [await takeInSound(desk, content, sound)]
  return [refusedFile(content.file, "Take this recording out of the zip file first.", "recording")]
}
