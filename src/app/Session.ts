/**
 * The one thing the screen talks to: a snapshot to draw and a few things to ask for. `wiring.ts` makes the real one;
 * tests and pictures use a made-up one.
 */
import type { DialogueEvent } from "../dialogue/DialogueEvent"
import type { DialogueState } from "../dialogue/DialogueState"
import type { Heard } from "../facts/Heard"
import type { JobSummary } from "../record/Store"
import type { EarState } from "../speech/Listener"
import type { BackupControl, BackupState } from "./backup/BackupState"
import type { Learner } from "./learn/Learner"
import type { SharedFile } from "./Sharing"
import type { SettingsKeeper } from "./settings/SettingsKeeper"
import type { SoundShelf } from "./sound/SoundShelf"

/** A plain sentence for the worker, such as a refused microphone. `trouble` stays until it is put right. */
export interface Notice {
  id: string
  kind: "trouble" | "news"
  words: string
}

export interface SessionView {
  /** `loading`: reading what is stored; `start`: no job is open; `job`: one is. */
  phase: "loading" | "start" | "job"
  dialogue: DialogueState
  ear: {
    state: EarState
    /** 0 to 1 while loading the ear pack, null once it is ready or before it is asked for. */
    loading: number | null
    level: number
    /** Which ear, in a word or two, for the foot of the page. */
    name: string
  }
  voice: {
    /** The sentence being spoken now, or null. */
    saying: string | null
    /** Which voice, in a word or two; null where nothing can speak and the screen alone shows the words. */
    name: string | null
  }
  /** What was spoken so far, oldest first. */
  spoken: readonly string[]
  /** What the open job's values came from, by the ids that their origins name. */
  heard: Readonly<Record<string, Heard>>
  jobs: readonly JobSummary[]
  /** A check-in went unanswered: to be seen and heard until it is answered. */
  alarm: boolean
  /** Another window has the job in hand: here it is only shown. */
  follows: boolean
  /** Copies of the job files in a folder of the worker's. */
  backup: BackupState
  notices: readonly Notice[]
}

/** An event without its time: the session stamps it. */
export type Unstamped<Event = DialogueEvent> = Event extends DialogueEvent ? Omit<Event, "at"> : never

export interface Session {
  readonly settings: SettingsKeeper
  readonly backup: BackupControl
  /** The sound that is kept on this device. */
  readonly sound: SoundShelf
  subscribe(changed: () => void): () => void
  /** The same object until something changes. */
  snapshot(): SessionView
  send(event: Unstamped): void
  /** A sentence typed instead of spoken: goes through the same interpreter. */
  type(words: string): void
  /** From a tap: opens a new job and wakes voice and ear. */
  newJob(place: string): void
  /** From a tap: a session of its own for practice, on a store that forgets, with the practice job in it. */
  startLesson(): Promise<Session>
  /** What reads the prompts with the worker, while no job is open. */
  startLearning(): Promise<Learner>
  resumeJob(job: string): void
  closeJob(): void
  /** From a tap: takes the job in hand that another window has. */
  takeOver(): void
  /** From a tap: starts or stops the ear. */
  listen(on: boolean): void
  /** From a tap: plays the sample recording through the ear, as if a worker spoke, into a job of its own. */
  hearSample(): void
  /** Saves the job file to the device's downloads. */
  saveJobFile(): void
  /** Makes the PDF report of the job in hand and saves it to the device's downloads. */
  saveReport(): void
  /** From a tap: hands the job file or the report of the job in hand to another app, where `canShareFiles`. */
  share(what: SharedFile): void
  /** Saves the job files of all jobs on this device as one zip file. */
  saveAllJobs(): void
  /** Takes in a job file, or a zip file of them; what is wrong with it becomes a notice. */
  openJobFile(file: File): void
  /**
   * Speaks a sentence that belongs to no job: nothing is written. From a tap it wakes the voice. `shown`: it also stands
   * on the screen until it is closed.
   */
  prompt(words: string, shown?: boolean): void
  dismiss(notice: string): void
}
