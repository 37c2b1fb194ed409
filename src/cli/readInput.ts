/** Files as the commands read them: every fault of a file is one plain line, never a stack. */
import { readFile } from "node:fs/promises"
import { done, type Outcome, refuse } from "../facts/Outcome"

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

/** One byte in so many may be no text; with more, the file is something else. */
const soundBytes = 50

const encodingOf = (bytes: Uint8Array) => {
  const mark = (bytes[0] ?? 0) * 256 + (bytes[1] ?? 0)
  return mark === 0xfffe ? "utf-16le" : mark === 0xfeff ? "utf-16be" : "utf-8"
}

/**
 * A file as text, UTF-8 unless it says otherwise; refuses what is none. A few bytes that are no text, as a bad card gives,
 * come out as "\uFFFD": whoever reads the text has to treat what holds one as damaged.
 */
export const readText = async (file: string): Promise<Outcome<string>> => {
  const bytes = await readBytes(file)
  if (!bytes.ok) return bytes
  const text = new TextDecoder(encodingOf(bytes.value)).decode(bytes.value)
  const wrong = text.split("\uFFFD").length - 1
  return wrong * soundBytes > text.length ? refuse(`${file}: the file is not text.`) : done(text)
}

/** A refusal with its file in front, unless it is there already. */
export const ofFile = (file: string, because: string): string =>
  because.startsWith(file) ? because : `${file}: ${because}`
