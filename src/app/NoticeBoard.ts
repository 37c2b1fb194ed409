/** The plain sentences that stand on the screen until they are closed; the same one never stands there twice. */
import { v7 } from "uuid"
import type { Notice } from "./Session"

export class NoticeBoard {
  all: readonly Notice[] = []

  constructor(private readonly changed: () => void) {}

  put(kind: Notice["kind"], words: string): void {
    if (this.all.some((one) => one.words === words)) return
    this.all = [...this.all, { id: v7(), kind, words }]
    this.changed()
  }

  take(id: string): void {
    this.all = this.all.filter((one) => one.id !== id)
    this.changed()
  }
}
