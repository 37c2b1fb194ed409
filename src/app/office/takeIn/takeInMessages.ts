/** What the page and the worker that takes files in say to each other. */
import type { Outcome } from "../../../facts/Outcome"
import type { Sound } from "../../../speech/readWav"
import type { TakenFile } from "./TakenFile"

/** `ear` is the absolute address of the ear pack; `sound` is what the page decoded of a recording, if it had to. */
export interface ToTaker {
  name: string
  file: File
  ear: string
  sound?: Outcome<Sound>
}

export type FromTaker = { tell: "part"; part: number } | { tell: "taken"; taken: TakenFile[] }
