/** How the voice sounds, as the worker set it. Read anew for every sentence, so a change is heard at once. */
import { z } from "zod"

export const VoiceSettings = z.object({
  /** 1 is the voice's own pace. */
  rate: z.number().min(0.5).max(2).default(1),
  /** Share of full volume. */
  volume: z.number().min(0).max(1).default(1),
  /** Whether a voice may be used that is spoken on somebody's server: what is said would leave the device. */
  remoteVoices: z.boolean().default(false),
})
export type VoiceSettings = z.infer<typeof VoiceSettings>

export const usualVoiceSettings: VoiceSettings = { rate: 1, volume: 1, remoteVoices: false }
