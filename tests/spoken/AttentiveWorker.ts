/**
 * A worker who listens: waits until the app is silent, says a line, and hears the answer. Where nothing comes he says it
 * again, where his words came back wrong he says no and then says it again, and he says yes to what was read back right.
 */

import { showFact } from "../../src/cli/showFact"
import { answerMe } from "../../src/dialogue/speak"
import type { LogLine } from "../../src/record/LogLine"

export interface Site {
  /** Resolves when the words have been spoken. */
  speak(text: string): Promise<void>
  /** Resolves when the app has said what it had to say and listens; at the latest after some seconds of listening. */
  answered(): Promise<void>
  lines(): Promise<LogLine[]>
}

/** A line, and the values that it means: none for a command. */
export interface Line {
  text: string
  means: readonly string[]
}

/** What has been said so often is given up, and is missing in the record. */
const mostTries = 4

const valuesIn = (lines: readonly LogLine[]): string[] =>
  lines.flatMap((line) => (line.type === "entry" ? [showFact(line.fact)] : []))

/** What a yes is an answer to. */
const isForYes = (words: string) => words.endsWith(answerMe) || words.endsWith("put your name to it?")

const isToRepeat = (words: string) => words.startsWith("Say that again")

const isRight = (fresh: readonly LogLine[], { text, means }: Line): boolean => {
  const values = valuesIn(fresh)
  if (fresh.some((line) => line.type === "said" && isToRepeat(line.words))) return false
  if (means.length > 0) return means.every((one) => values.includes(one)) && values.every((one) => means.includes(one))
  return fresh.some((line) => line.type === "heard" && line.heard.text === text)
}

export class AttentiveWorker {
  /** How often he spoke. */
  turns = 0

  constructor(private readonly site: Site) {}

  async say(line: Line): Promise<void> {
    // A yes in the script is for a question; where none is open it has been said already.
    if (line.text === "yes" && !(await this.isAsked())) return
    for (let tries = 0; tries < mostTries; tries++) {
      const fresh = await this.speak(line.text)
      if (isRight(fresh, line)) return line.means.length > 0 ? this.confirm() : undefined
      if (valuesIn(fresh).length > 0) await this.speak("no")
    }
  }

  private async confirm(): Promise<void> {
    for (let tries = 0; tries < mostTries && (await this.isAsked()); tries++) await this.speak("yes")
  }

  private async isAsked(): Promise<boolean> {
    const lines = await this.site.lines()
    const at = lines.findLastIndex((line) => line.type === "said")
    const asked = lines[at]
    const isAnswered = lines.slice(at).some((line) => line.type === "accepted")
    return asked?.type === "said" && (isForYes(asked.words) || isToRepeat(asked.words)) && !isAnswered
  }

  /** What was written and said from these words on. */
  private async speak(text: string): Promise<LogLine[]> {
    const before = (await this.site.lines()).length
    this.turns += 1
    await this.site.speak(text)
    await this.site.answered()
    return (await this.site.lines()).slice(before)
  }
}
