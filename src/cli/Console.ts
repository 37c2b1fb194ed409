/** Where a command reads and writes, so that commands can be tested without a terminal. */

export interface Console {
  /** One line on standard output. */
  print(line: string): void
  /** One plain line on standard error. */
  complain(line: string): void
  /** Lines of standard input, as they come. */
  lines(): AsyncIterable<string>
}

/** 0 fine, 1 a stop stands open, 2 bad input. */
export type ExitStatus = 0 | 1 | 2
