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

/** `said` is what the app said last; `heard` what an ear made of the sound since. */
export const isEcho = (said: string, heard: string): boolean => {
  const words = plain(heard)
  if (words === "") return false
  return plain(said) === words || (words.split(" ").length >= leastWords && plain(said).includes(words))
}
