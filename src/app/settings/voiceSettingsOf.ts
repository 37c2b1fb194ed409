/**
 * The voice as the worker set it, in the figures that a voice takes. The step of 0 leaves room above it, since a voice
 * cannot be louder than full.
 */
import { mostSteps } from "../../dialogue/Preferences"
import type { VoiceSettings } from "../../speech/VoiceSettings"
import type { Settings } from "./Settings"

const volumes = [0.3, 0.45, 0.6, 0.8, 0.87, 0.94, 1] as const
const rates = [0.7, 0.8, 0.9, 1, 1.15, 1.3, 1.5] as const

/** `loud`: as loud as the device can, whatever was set. */
export const voiceSettingsOf = (settings: Settings, loud: boolean): VoiceSettings => ({
  volume: loud || settings.soundFirst ? 1 : volumes[settings.volumeStep + mostSteps]!,
  rate: rates[settings.rateStep + mostSteps]!,
  remoteVoices: settings.remoteVoices,
})
