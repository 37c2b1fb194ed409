/**
 * The words of a flat grammar text, in the order they first come. Read here, before the engine sees the text, because
 * the engine refuses a whole grammar over one word it cannot pronounce and does not say which.
 */

/** Words outside rule names, tags, weights and comments. */
export const jsgfWords = (jsgf: string): string[] => {
  const rules = jsgf
    .replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, " ")
    .replace(/#JSGF[^;]*;/, " ")
    .replace(/\bgrammar\s+[\w.]+\s*;/, " ")
    .replace(/\{[^}]*\}|<[^>]*>|\/[\d.eE+-]+\//g, " ")
    .replace(/\bpublic\b(?=\s*=)/g, " ")
  return [...new Set(rules.match(/[^\s=|()[\]*+;"]+/g) ?? [])]
}
