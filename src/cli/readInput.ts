/** Files as the commands read them: every fault of a file is one plain line, never a stack. */
import { readFile } from "node:fs/promises"
import { done, type Outcome, refuse } from "../facts/Outcome"
import { decodeText } from "../speech/decodeText"

const why: Record<string, string> = {
  ENOENT: "there is no such file",
  EACCES: "it may not be read",
  EISDIR: "it is a folder",
}

/** A file's bytes. */
export const readBytes = async (file: string): Promise<Outcome<Uint8Array>> => {
  try {
    return done(new Uint8Array(await readFile(file)))
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code ?? ""
    return refuse(`${file}: ${why[code] ?? `it could not be read (${code})`}.`)
  }
}

/** A file as text; refuses what is none. Bytes that are no text come out as "\uFFFD": see `decodeText`. */
export const readText = async (file: string): Promise<Outcome<string>> => {
  const bytes = await readBytes(file)
  if (!bytes.ok) return bytes
  const text = decodeText(bytes.value)
  return text === null ? refuse(`${file}: the file is not text.`) : done(text)
}

/** A refusal with its file in front, unless it is there already. */
export const ofFile = (file: string, because: string): string =>
  because.startsWith(file) ? because : `${file}: ${because}`
