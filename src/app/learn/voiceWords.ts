/** What was learnt of a voice, in plain sentences. */
import { mostEase, type VoiceFit } from "../../speech/VoiceFit"

export const voiceWords = ({ ease }: VoiceFit): string => {
  if (ease === 0) return "The ear follows you as well as most. Nothing had to be changed."
  if (ease < mostEase) return "Your voice is a little harder for the ear than most. It will ask you less often."
  return "Your voice is harder for the ear than most. It will ask you less often, and still more often than others."
}
