/** The adapters that a session is made of. `wiring.ts` chooses real ones; tests bring scripted ones. */
import type { Tools } from "../dialogue/Tools"
import type { EarGrammar } from "../facts/EarGrammar"
import type { Context, Screen } from "../facts/Interpretation"
import type { Store } from "../record/Store"
import type { Listener } from "../speech/Listener"
import type { Speaker } from "../speech/Speaker"
import type { Backup } from "./backup/Backup"
import type { JobLead } from "./device/JobLead"
import type { JobNews } from "./device/JobNews"
import type { Learner } from "./learn/Learner"
import type { SettingsKeeper } from "./settings/SettingsKeeper"
import type { SoundKeeper } from "./sound/SoundKeeper"
import type { SoundShelf } from "./sound/SoundShelf"

export interface Parts {
  store: Store
  tools: Tools
  speaker: Speaker
  /** Which of several windows has a job in hand. */
  lead: JobLead
  /** Calls back with the jobs that another window wrote to. */
  watch?: JobNews["watch"]
  settings: SettingsKeeper
  /** Copies of the job files in a folder; none for practice. */
  backup?: ((trouble: (because: string) => void) => Backup) | undefined
  sound: SoundShelf
  /** Keeps the sound of what is said; null where none is ever kept. */
  keeper: SoundKeeper | null
  /** While on, what is said is as loud as the device can. */
  speakLoud(on: boolean): void
  /** Turns the page to a screen of the job. */
  show(screen: Screen): void
  /** The ear on the microphone. */
  microphone: Listener
  /** Reads prompts with the worker, on the offline ear alone. */
  createLearner(): Learner
  /** Its pack is on the device, so it may be got ready before it is wanted. */
  isEarHere?: boolean
  /** An ear that is given the sample recording instead, or null where there is none; `ended` is called at its end. */
  sample: ((ended: () => void) => Promise<Listener>) | null
  earGrammar(context: Context): EarGrammar
  /** Words will come soon. What reads them may take its time to get ready now, while the worker draws breath. */
  expectWords?(): void
  /** Local time now, ISO 8601 with its offset. */
  now(): string
  device: string
  pack: string
  /** A job in its store is not taken up by itself. */
  isPractice?: boolean
  voiceName(): string | null
  /** Which ear listens, in a few words. */
  earName(): string
}
