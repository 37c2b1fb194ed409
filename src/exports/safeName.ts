/**
 * A file name out of any text: whatever could climb out of a folder, hide the file or mean something to a shell or to
 * Windows is replaced. Different texts may give one name, so whoever writes must look out for that.
 */

const reserved = /^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i
const mostLetters = 100

/** One to about a hundred letters, digits, spaces, dots, dashes and underscores, the first of them no dot or dash. */
export const safeName = (text: string): string => {
  const plain = text
    .normalize("NFC")
    .replaceAll(/[^\p{L}\p{N}\p{M} ._-]+/gu, "-")
    .replaceAll(/\.{2,}/g, ".")
  const cut = [...plain].slice(0, mostLetters).join("")
  const trimmed = cut.replaceAll(/^[\s.\p{M}-]+|[\s.-]+$/gu, "")
  if (trimmed === "") return "job"
  return reserved.test(trimmed) ? `_${trimmed}` : trimmed
}
