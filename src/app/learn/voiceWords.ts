/** What was learnt of a voice, in a plain sentence. */
import type { VoiceFit } from "../../speech/VoiceFit"

export const voiceWords = ({ ease }: VoiceFit): string =>
  ease === 0
    ? "The ear hears you as well as most. Nothing had to be changed."
    : "Your voice is a little fainter to the ear than most. It will ask you less often."
