/**
 * The worker that the offline ear lives in, so that decoding never holds up the page. It is the sound listener with
 * messages in place of calls.
 */
import "./standInDocument"
import { done, type Outcome, refuse } from "../facts/Outcome"
import type { FromWorker, FromWorklet, ToWorker } from "./earMessages"
import { loadEngine } from "./engine"
import { loadEarFiles } from "./loadEarFiles"
import { createRecogniser, type Recogniser } from "./recogniser"
import { createSoundListener } from "./soundListener"

const tell = (message: FromWorker, handOver: Transferable[] = []) => self.postMessage(message, { transfer: handOver })

let base = ""
let microphone: MessagePort | null = null

/**
 * Browsers translate the engine carefully only once it has worked for a while, and the first answer would take three
 * times as long as the others. Two seconds of faint noise are work enough, in pieces, so that a start need not wait.
 */
const warmUp = async (recogniser: Recogniser) => {
  const noise = Float32Array.from({ length: recogniser.rateHz / 4 }, (_, n) => Math.sin(n * n) / 1000)
  for (let piece = 0; piece < 8; piece++) {
    await new Promise((fulfil) => setTimeout(fulfil))
    recogniser.hear(noise)
  }
}

let cold: Recogniser | null = null

const load = async (): Promise<Outcome<Recogniser>> => {
  const [engine, files] = await Promise.all([loadEngine(), loadEarFiles(base)])
  if (!files.ok) return files
  cold = createRecogniser(engine, files.value)
  return done(cold)
}

const listener = createSoundListener({ load })

const takeSound = ({ data }: MessageEvent<FromWorklet>) => {
  if ("sound" in data) listener.feed(data.sound, data.rateHz)
  else if (data.mark === "deafen") listener.deafen()
  else listener.undeafen(data.marginMs)
}

const start = () =>
  listener.start({
    heard: (heard) => tell({ tell: "heard", heard }),
    fit: (id, fit) => tell({ tell: "fit", id, fit }),
    sound: (id, sound) => tell({ tell: "sound", id, sound }, [sound.samples.buffer]),
    state: (state) => tell({ tell: "state", state }),
    level: (level) => tell({ tell: "level", level }),
  })

const answer = async (message: Exclude<ToWorker, { do: "hear" } | { do: "fit" }>): Promise<Outcome> => {
  if (message.do === "start") return start()
  if (message.do === "stop") {
    await listener.stop()
    return done(undefined)
  }
  base = message.base
  if (message.do === "warm") return listener.warm()
  const prepared = await listener.prepare(message.grammar)
  if (prepared.ok && cold) {
    void warmUp(cold)
    cold = null
  }
  return prepared
}

self.addEventListener("message", async ({ data }: MessageEvent<ToWorker>) => {
  if (data.do === "hear") {
    microphone?.close()
    microphone = data.port
    microphone.onmessage = takeSound
    return
  }
  if (data.do === "fit") return listener.fitTo(data.voice)
  const outcome = await answer(data).catch(() => refuse("The offline ear does not work in this browser."))
  tell({ tell: "answer", call: data.call, outcome })
})
