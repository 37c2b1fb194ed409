/**
 * Cuts a long text into pieces that a browser's voice says without stopping: Chrome falls silent after 14 to 15 seconds
 * of one utterance with some voices (Chromium 679437). Cuts at full stops first, then at commas, then between words.
 */

/** About ten seconds at an unhurried pace. */
const mostCharacters = 150

export const splitSpeech = (words: string, most = mostCharacters): string[] => {
  const text = words.trim()
  if (text === "") return []
  if (text.length <= most) return [text]
  const cut = lastCut(text, most)
  return [text.slice(0, cut).trim(), ...splitSpeech(text.slice(cut), most)]
}

const lastCut = (text: string, most: number): number => {
  const head = text.slice(0, most)
  for (const mark of [/[.?!]\s/g, /[,;:]\s/g, /\s/g]) {
    const at = [...head.matchAll(mark)].at(-1)?.index
    if (at !== undefined && at > 0) return at + 1
  }
  return most
}
