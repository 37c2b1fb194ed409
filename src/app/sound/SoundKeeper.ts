/**
 * Keeps the sound of what was said, where the worker wants that. Sound waits in memory until its words are a line of the
 * log, so nothing is kept of talk that meant nothing here (D2); and no line ever waits for sound.
 */
import type { Outcome } from "../../facts/Outcome"
import type { ClipStore } from "../../record/Clip"
import type { LogLine } from "../../record/LogLine"
import type { EncodedClip } from "../../speech/encodeClip"
import type { UtteranceSound } from "../../speech/Listener"
import { fewBytes } from "../offline/storageCare"
import type { DroppedSound } from "./DroppedSound"

export interface SoundKeeperParts {
  clips: ClipStore
  /** Tells of sound that gave way to lines. */
  dropped: DroppedSound
  /** Whether the worker wants sound kept, now. */
  isOn(): boolean
  encode(samples: Float32Array, rateHz: number): Promise<EncodedClip>
  /** Bytes left on the device; null where it does not tell. */
  free(): Promise<number | null>
  /** ISO 8601. */
  now(): string
}

/** Utterances that wait for their line; more than these are never on their way at once. */
const mostWaiting = 8

/** Said when there is room for lines and for nothing else. */
export const noRoom =
  "This device runs short of room. Sound is not kept until there is more; the job is stored as ever."

export class SoundKeeper {
  private readonly waiting = new Map<string, UtteranceSound>()
  private work: Promise<void> = Promise.resolve()
  private told = false
  private trouble: (because: string) => void = () => {}

  constructor(private readonly parts: SoundKeeperParts) {}

  /** `trouble` takes a sentence, fit to be spoken, where sound was not kept or had to go. */
  watch(trouble: (because: string) => void): void {
    this.trouble = trouble
    this.parts.dropped.subscribe(() => trouble(this.parts.dropped.words() ?? ""))
  }

  /** The sound of an utterance, before anybody knows whether it means anything. */
  hear(heard: string, sound: UtteranceSound): void {
    if (!this.parts.isOn()) return
    this.waiting.set(heard, sound)
    const [oldest] = this.waiting.keys()
    if (this.waiting.size > mostWaiting && oldest !== undefined) this.waiting.delete(oldest)
  }

  /** These lines are on disk: the sound of their words is kept too, in its own time. */
  keep(lines: readonly LogLine[]): void {
    for (const line of lines) {
      const sound = line.type === "heard" ? this.waiting.get(line.heard.id) : undefined
      if (line.type !== "heard" || !sound) continue
      this.forget(line.heard.id)
      this.work = this.work.then(() => this.keepOne(line.job, line.heard.id, sound)).catch(() => {})
    }
  }

  /** The utterance has been dealt with: sound that no line asked for is gone. */
  forget(heard: string): void {
    this.waiting.delete(heard)
  }

  /** Resolves once all that is to be kept is on disk, or was given up. */
  settled(): Promise<void> {
    return this.work
  }

  private async keepOne(job: string, heard: string, { samples, rateHz, from }: UtteranceSound): Promise<void> {
    const { clips, encode, free, now } = this.parts
    const left = await free()
    if (left !== null && left < fewBytes) return this.tell(noRoom)
    const { type, bytes } = await encode(samples, rateHz)
    const kept: Outcome = await clips.put({
      v: 1,
      job,
      heard,
      at: new Date(now()).toISOString(),
      from,
      seconds: samples.length / rateHz,
      type,
      bytes: bytes.length,
      silenced: [],
      sound: bytes,
    })
    if (!kept.ok) return this.tell(kept.because)
    this.told = false
  }

  /** Once for each run of sound that is not kept. */
  private tell(because: string): void {
    if (!this.told) this.trouble(because)
    this.told = true
  }
}
