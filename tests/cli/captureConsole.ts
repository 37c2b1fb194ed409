/** A console that keeps what a command prints and complains of, and feeds it lines. */
import type { Console } from "../../src/cli/Console"

export interface CapturedConsole extends Console {
  printed: string[]
  complained: string[]
}

export const captureConsole = (input: readonly string[] = []): CapturedConsole => {
  const printed: string[] = []
  const complained: string[] = []
  return {
    printed,
    complained,
    print: (line) => void printed.push(line),
    complain: (line) => void complained.push(line),
    lines: async function* () {
      yield* input
    },
  }
}
