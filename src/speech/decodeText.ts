/**
 * The bytes of a transcript or a job file as text, UTF-8 unless they say otherwise. A few bytes that are no text, as a bad
 * card gives, come out as "\uFFFD": whoever reads the text has to treat what holds one as damaged.
 */

/** One byte in so many may be no text; with more, the file is something else. */
const soundBytes = 50

const encodingOf = (bytes: Uint8Array) => {
  const mark = (bytes[0] ?? 0) * 256 + (bytes[1] ?? 0)
  return mark === 0xfffe ? "utf-16le" : mark === 0xfeff ? "utf-16be" : "utf-8"
}

/** Null for what is no text. */
export const decodeText = (bytes: Uint8Array): string | null => {
  const text = new TextDecoder(encodingOf(bytes)).decode(bytes)
  const wrong = text.split("\uFFFD").length - 1
  return wrong * soundBytes > text.length ? null : text
}
