/** What the page and the worker that takes files in say to each other. */
import type { Outcome } from "../../../facts/Outcome"
import type { Sound } from "../../../speech/readWav"
import type { TakenFile } from "./TakenFile"

/** `ear` is the absolute address of the ear pack; `sound` is what the page decoded of a recording, if it had to. */
export interface ToTaker {
  name: string
  file: File
  ear: string
  keep: KeepOrder
  sound?: Outcome<Sound>
}

/** Whether the sound of recordings is kept, and whether this page can play Opus, which a worker cannot tell. */
export interface KeepOrder {
  sound: boolean
  opus: boolean
}

/** `dropped`: so many clips gave way to lines, as the device is full. */
export type FromTaker =
  | { tell: "part"; part: number }
  | { tell: "dropped"; clips: number }
  | { tell: "taken"; taken: TakenFile[] }
