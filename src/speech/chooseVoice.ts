/**
 * The speaker of the app: the browser's own voice, else the built-in one, else the browser's voice although it lists
 * none. Where none of them speaks, every sentence is refused with the reason and the screen alone shows the words.
 */
import { createAudioOut } from "./audioOut"
import { createBrowserVoice } from "./browserVoice"
import { type ChosenSpeaker, createSpeaker } from "./createSpeaker"
import { createLaterVoice } from "./laterVoice"
import { usualVoiceSettings, type VoiceSettings } from "./VoiceSettings"

export interface VoiceChoice {
  /** Address of the built-in voice's folder, ending with a stroke; on the page's own server. */
  packFolder?: string
  settings?: () => VoiceSettings
}

export const chooseVoice = ({
  packFolder = "./voice/",
  settings = () => usualVoiceSettings,
}: VoiceChoice = {}): ChosenSpeaker => {
  const synthesis = "speechSynthesis" in globalThis ? globalThis.speechSynthesis : undefined
  const audio = createAudioOut()
  return createSpeaker({
    audio,
    settings,
    voices: [
      createBrowserVoice({ synthesis, settings }),
      createLaterVoice("built-in voice", async () => {
        const [{ createClipVoice }, { loadVoicePack }] = await Promise.all([
          import("./clipVoice"),
          import("./loadVoicePack"),
        ])
        return createClipVoice({ audio, settings, load: () => loadVoicePack(packFolder) })
      }),
      createBrowserVoice({ synthesis, settings, unlisted: true }),
    ],
  })
}
