/**
 * The built-in voice for browsers that have none: word clips put one after the other. The pack is fetched when this
 * voice is first wanted, and never by a browser that has a voice of its own.
 */
import { done, type Outcome, refuse } from "../facts/Outcome"
import type { AudioOut } from "./audioOut"
import { planClips } from "./planClips"
import { renderClips } from "./renderClips"
import type { Voice } from "./Voice"
import type { VoiceClips } from "./VoicePack"
import { usualVoiceSettings, type VoiceSettings } from "./VoiceSettings"

export interface ClipVoiceOptions {
  audio: AudioOut
  load: () => Promise<Outcome<VoiceClips>>
  settings?: () => VoiceSettings
}

export const createClipVoice = ({ audio, load, settings = () => usualVoiceSettings }: ClipVoiceOptions): Voice => {
  let clips: VoiceClips | null = null
  let loading: Promise<Outcome<VoiceClips>> | null = null

  const fetchClips = async (): Promise<Outcome> => {
    if (clips) return done(undefined)
    loading ??= load()
    const loaded = await loading
    // A failed load is tried again the next time: the network may be back.
    loading = null
    if (!loaded.ok) return loaded
    clips = loaded.value
    return done(undefined)
  }

  return {
    name: "built-in voice",
    isReady: () => clips !== null,
    prepare: async () => {
      const [woken, fetched] = await Promise.all([audio.wake(), fetchClips()])
      return woken.ok ? fetched : woken
    },
    speak: async (words, signal) => {
      if (!clips) return refuse("The built-in voice is not loaded.")
      const { rate, volume } = settings()
      const samples = renderClips(planClips(words, clips).pieces, clips)
      return audio.play({ samples, rateHz: clips.rateHz, volume, pace: paceOf(rate) }, signal)
    },
    release: async () => {
      clips = null
    },
  }
}

/** Faster clips are higher clips, so the pace is kept where words stay clear. */
const paceOf = (rate: number) => Math.min(1.25, Math.max(0.8, rate))
