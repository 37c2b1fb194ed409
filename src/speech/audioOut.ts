/**
 * Plays samples through Web Audio. Browsers keep sound off until a tap, and phones take it away again during a call or
 * after the microphone was used; a clock that stands still shows it, for no event does.
 */
import { done, type Outcome, refuse } from "../facts/Outcome"
import { cutShort } from "./Voice"

export interface AudioOut {
  /** From a tap: the call that counts happens before the first wait. */
  wake(): Promise<Outcome>
  /** Resolves when it was heard to its end; refuses when it was cut short or sound is off. */
  play(sound: Playing, signal: AbortSignal): Promise<Outcome>
  release(): Promise<void>
}

export interface Playing {
  samples: Float32Array
  rateHz: number
  /** 0 to 1. */
  volume?: number
  /** Above 1 it plays faster, and higher. */
  pace?: number
}

const wakeMs = 1000
/** How much longer than its length a sound may take before it is given up. */
const lateMs = 800
const soundIsOff = "The browser keeps sound off until the page is tapped."

/** The context is made on the first wake, because one made earlier stays asleep in some browsers. */
export const createAudioOut = (makeContext: () => AudioContext = () => new AudioContext()): AudioOut => {
  let context: AudioContext | null = null

  /** Asking again may never settle, so it is given a second. */
  const resume = async (): Promise<boolean> => {
    if (!context) return false
    if (context.state !== "running") await Promise.race([context.resume().catch(() => undefined), pause(wakeMs)])
    return context.state === "running"
  }

  return {
    wake: async () => {
      try {
        context ??= makeContext()
      } catch {
        return refuse("This browser cannot play sounds.")
      }
      return (await resume()) ? done(undefined) : refuse(soundIsOff)
    },
    play: async (sound, signal) => {
      if (!(await resume()) || !context) return refuse(soundIsOff)
      if (signal.aborted) return refuse(cutShort)
      return sound.samples.length === 0 ? done(undefined) : playThrough(context, sound, signal)
    },
    release: async () => {
      const old = context
      context = null
      if (old && old.state !== "closed") await old.close()
    },
  }
}

const pause = (waitMs: number) => new Promise<void>((resolve) => setTimeout(resolve, waitMs))

const playThrough = (context: AudioContext, sound: Playing, signal: AbortSignal): Promise<Outcome> => {
  const { samples, rateHz, volume = 1, pace = 1 } = sound
  const buffer = context.createBuffer(1, samples.length, rateHz)
  buffer.copyToChannel(Float32Array.from(samples), 0)
  const source = context.createBufferSource()
  source.buffer = buffer
  source.playbackRate.value = pace
  const gain = context.createGain()
  gain.gain.value = volume
  source.connect(gain).connect(context.destination)
  const seconds = samples.length / rateHz / pace
  const began = context.currentTime

  return new Promise((resolve) => {
    const finish = (outcome: Outcome) => {
      clearTimeout(timer)
      signal.removeEventListener("abort", cut)
      source.onended = null
      gain.disconnect()
      resolve(outcome)
    }
    const cut = () => {
      source.stop()
      finish(refuse(cutShort))
    }
    const timer = setTimeout(
      () => finish(context.currentTime - began >= seconds ? done(undefined) : refuse("The sound stopped on its way.")),
      seconds * 1000 + lateMs,
    )
    source.onended = () => finish(done(undefined))
    signal.addEventListener("abort", cut)
    source.start()
  })
}
