/**
 * A grammar of free phones: the best that any speech at all can do on a stretch of sound. An answer that falls far short
 * of it was not what was said.
 */

/** The phones of the sound model (ARPAbet), without the noises. */
export const phones =
  "AA AE AH AO AW AY B CH D DH EH ER EY F G HH IH IY JH K L M N NG OW OY P R S SH T TH UH UW V W Y Z ZH".split(" ")

const wordOf = (phone: string) => `phone-${phone.toLowerCase()}`

/** One word for each phone. */
export const phoneWords: ReadonlyArray<readonly [word: string, phones: string]> = phones.map((phone) => [
  wordOf(phone),
  phone,
])

export const phoneLoop = `#JSGF V1.0;\ngrammar phones;\npublic <s> = (${phones.map(wordOf).join(" | ")})+;\n`
