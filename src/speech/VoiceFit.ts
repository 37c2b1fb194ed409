/** What was learnt of one voice on this device, where it stays. */
import { z } from "zod"

/** No voice is eased by more, in nats a frame; `marginFor.ts` has what that can and cannot do. */
export const mostEase = 0.8

export const VoiceFit = z.object({
  v: z.literal(1),
  /** By how much the fit of an answer counts as better, in nats a frame. Nought: this voice needs nothing. */
  ease: z.number().min(0).max(mostEase),
  /** Of how many prompts it was learnt. */
  prompts: z.number().int().positive(),
})
export type VoiceFit = z.infer<typeof VoiceFit>

/** Whose voice an ear hears: one that was learnt, one that is just being learnt, or anybody's. */
export type WhoseVoice = VoiceFit | "learning" | null
