/** Text as the words that it is searched by: lower case, without accents and punctuation; "fifty-two" is two words. */
export const splitWords = (text: string): string[] =>
  text
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .match(/[\p{L}\p{N}]+(?:['’.][\p{L}\p{N}]+)*/gu)
    ?.map((word) => word.replaceAll("’", "'")) ?? []
