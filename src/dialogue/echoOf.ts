/**
 * Whether what was heard is the app's own voice. The ear is deaf while the app speaks, so this is only the second
 * guard: it compares words, and lets short ones pass, since a short true answer is often part of the question.
 */

/** Fewer words than this are never taken for an echo of a part of a sentence. */
const leastWords = 5

const plain = (words: string) =>
  words
    .toLowerCase()
    .replace(/[^a-z0-9' ]+/g, " ")
    .replace(/\s+/g, " ")
    .trim()

/**
 * `said` holds the sentences that the app said last; `heard` is what an ear made of the sound since. A part of a sentence
 * may also be the worker's own words, where he says again what was taken back: the loop decides.
 */
export const echoOf = (said: readonly string[], heard: string): "whole" | "part" | null => {
  const words = plain(heard)
  if (words === "") return null
  const all = plain(said.join(" "))
  if (all === words || said.some((sentence) => plain(sentence) === words)) return "whole"
  return words.split(" ").length >= leastWords && all.includes(words) ? "part" : null
}
