/**
 * A microphone of the page's own, into which a test speaks when it likes, in real time: Chromium's plays a file from
 * start to end, and nobody who speaks so can wait for an answer. The page asks for it as for any other.
 */
import type { Page } from "playwright-core"

interface WithMouth {
  /** Plays samples, signed and 16 bits wide, and ends with them. */
  speakAloud(base64: string, rateHz: number): Promise<void>
}

/** Runs in the page, before anything of its own. */
const standIn = () => {
  let open: { context: AudioContext; out: MediaStreamAudioDestinationNode } | null = null
  const microphone = () => {
    if (!open) {
      const context = new AudioContext()
      open = { context, out: context.createMediaStreamDestination() }
    }
    return open
  }
  navigator.mediaDevices.getUserMedia = async () => microphone().out.stream.clone()
  const mouth: WithMouth = {
    speakAloud: async (base64, rateHz) => {
      const { context, out } = microphone()
      await context.resume()
      const bytes = Uint8Array.from(atob(base64), (one) => one.charCodeAt(0))
      const sound = context.createBuffer(1, bytes.length / 2, rateHz)
      sound.copyToChannel(
        Float32Array.from(new Int16Array(bytes.buffer), (one) => one / 32_768),
        0,
      )
      const source = new AudioBufferSourceNode(context, { buffer: sound })
      source.connect(out)
      source.start()
      await new Promise((fulfil) => source.addEventListener("ended", fulfil))
    },
  }
  Object.assign(window, mouth)
}

/** To be called before the page is opened. */
export const giveMicrophone = async (page: Page): Promise<void> => {
  // Functions are marked with their names by a function that pages do not have, where a bench runs them.
  await page.addInitScript({ content: "globalThis.__name ??= (one) => one" })
  await page.addInitScript(standIn)
}

/** Speaks into the page's microphone; `samples` between -1 and 1. Resolves when the last one has been played. */
export const speakInto = (page: Page, samples: Float32Array, rateHz: number): Promise<void> => {
  const words = Int16Array.from(samples, (one) => Math.round(one * 32_767))
  const base64 = Buffer.from(words.buffer).toString("base64")
  return page.evaluate(([sound, rate]) => (window as unknown as WithMouth).speakAloud(sound, rate), [
    base64,
    rateHz,
  ] as const)
}
