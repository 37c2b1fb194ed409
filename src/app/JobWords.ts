/** What was heard and what was spoken on the job in hand, for the screen. The log holds the same; this is at hand at once. */
import type { Heard } from "../facts/Heard"
import type { LogLine } from "../record/LogLine"

export class JobWords {
  spoken: string[] = []
  heard: Record<string, Heard> = {}

  /** Takes up what a stored log says. */
  remember(lines: readonly LogLine[]): void {
    const heard = lines.flatMap((line) => (line.type === "heard" ? [[line.heard.id, line.heard]] : []))
    this.heard = Object.fromEntries(heard)
    this.spoken = lines.flatMap((line) => (line.type === "said" ? [line.words] : []))
  }

  hear(heard: Heard): void {
    this.heard = { ...this.heard, [heard.id]: heard }
  }

  speak(words: string): void {
    this.spoken = [...this.spoken, words]
  }
}
