/**
 * The best English voice of a browser's list. Android writes languages with an underscore, and a voice that is not on
 * the device would send every sentence away.
 */

/** The part of a browser's voice that is looked at. */
export interface ListedVoice {
  name: string
  lang: string
  localService: boolean
  default?: boolean
}

/** Accents in the order of how near they are to a British site; others come after these. */
const nearness = ["en-gb", "en-ie", "en-au", "en-nz", "en-za", "en-in", "en-ca", "en-us"]

/** "en_GB" and "EN-gb" are "en-gb". */
export const tidyLanguage = (lang: string): string => lang.replaceAll("_", "-").toLowerCase()

const isEnglish = (voice: ListedVoice) => /^en(-|$)/.test(tidyLanguage(voice.lang))

const rankOf = (voice: ListedVoice): number => {
  const at = nearness.findIndex((lang) => tidyLanguage(voice.lang).startsWith(lang))
  const accent = at < 0 ? nearness.length : at
  return (voice.localService ? 0 : 100) + 2 * accent + (voice.default ? 0 : 1)
}

/** Null where no English voice may be used. */
export const pickVoice = <V extends ListedVoice>(voices: readonly V[], remoteVoices: boolean): V | null =>
  voices
    .filter((voice) => isEnglish(voice) && (voice.localService || remoteVoices))
    .reduce<V | null>((best, voice) => (best && rankOf(best) <= rankOf(voice) ? best : voice), null)
