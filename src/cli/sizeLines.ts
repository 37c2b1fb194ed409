/**
 * `size`: one question a line in, one answer a line out, in order. A line that cannot be answered is complained about in
 * plain words and the next one is taken, so that one slip does not cost a whole file.
 */
import type { z } from "zod"
import { type Outcome, refuse } from "../facts/Outcome"
import { answerSize } from "../rules/answerSize"
import { type SizeAnswer, SizeQuestion } from "../rules/SizeQuestion"
import type { Console, ExitStatus } from "./Console"

/** The names and what is wrong with them, in one line. */
const explain = (error: z.ZodError): string =>
  error.issues
    .map((issue) => (issue.path.length > 0 ? `${issue.path.join(".")}: ${issue.message}` : issue.message))
    .join("; ")

const parseLine = (line: string): Outcome<unknown> => {
  try {
    return { ok: true, value: JSON.parse(line) }
  } catch {
    return refuse("This is not JSON.")
  }
}

/** Answers one line of JSON. Says plainly what is missing, unknown or out of range. */
export const sizeLine = (line: string): Outcome<SizeAnswer> => {
  const parsed = parseLine(line)
  if (!parsed.ok) return parsed
  const question = SizeQuestion.safeParse(parsed.value)
  return question.success ? answerSize(question.data) : refuse(explain(question.error))
}

/** All lines, blank ones passed over. Ends with 2 where any line could not be answered. */
export const sizeLines = async (
  lines: AsyncIterable<string> | Iterable<string>,
  io: Pick<Console, "print" | "complain">,
): Promise<ExitStatus> => {
  let status: ExitStatus = 0
  let number = 0
  for await (const line of lines) {
    number += 1
    if (line.trim() === "") continue
    const answer = sizeLine(line)
    if (answer.ok) io.print(JSON.stringify(answer.value))
    else {
      io.complain(`line ${number}: ${answer.because}`)
      status = 2
    }
  }
  return status
}
