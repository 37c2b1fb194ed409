/**
 * A recording in the place of the microphone, for the sample job: it is played aloud and into the same worklet, holds
 * still while the app speaks, and goes on just before the next words, so that the talk has the pace of a real one.
 */
import { done, type Outcome, refuse } from "../facts/Outcome"
import { type ToWorklet, workletName } from "./earMessages"
import type { Microphone, MicrophoneEvents } from "./microphone"
import workletUrl from "./microphoneWorklet?worker&url"

/** Silence kept in front of the next words when the recording goes on, in seconds. */
const leadSeconds = 0.6
/** Louder than this is speech: recordings made for this purpose have no noise between the words. */
const speechLevel = 0.02

/** Where the next words begin at or after a place in the sound, less the lead; never before that place. Seconds. */
export const nextWordsAt = (samples: Float32Array, rateHz: number, fromSeconds: number): number => {
  const from = Math.floor(fromSeconds * rateHz)
  const found = samples.findIndex((sample, index) => index >= from && Math.abs(sample) > speechLevel)
  return found < 0 ? samples.length / rateHz : Math.max(fromSeconds, found / rateHz - leadSeconds)
}

/** `address` is the recording's, of a kind that the browser can decode. */
export const openRecording =
  (address: string, ended: () => void) =>
  async (events: MicrophoneEvents): Promise<Outcome<Microphone>> => {
    const context = new AudioContext()
    let source: AudioBufferSourceNode | null = null
    let startedAt = 0
    let offset = 0
    try {
      const answer = await fetch(address)
      if (!answer.ok) return refuse("The sample recording is not there.")
      const sound = await context.decodeAudioData(await answer.arrayBuffer())
      await context.audioWorklet.addModule(workletUrl)
      const node = new AudioWorkletNode(context, workletName, { numberOfInputs: 1, numberOfOutputs: 0 })
      const { port1, port2 } = new MessageChannel()
      events.port(port1)
      node.port.postMessage({ port: port2 } satisfies ToWorklet, [port2])
      const samples = sound.getChannelData(0)

      const hold = () => {
        if (!source) return
        source.onended = null
        source.stop()
        offset += context.currentTime - startedAt
        source = null
      }
      const goOn = () => {
        if (source || context.state === "closed") return
        offset = nextWordsAt(samples, sound.sampleRate, offset)
        source = new AudioBufferSourceNode(context, { buffer: sound })
        source.connect(node)
        source.connect(context.destination)
        source.onended = ended
        source.start(0, offset)
        startedAt = context.currentTime
      }
      goOn()
      return done({
        mark: (mark) => {
          node.port.postMessage(mark)
          if (mark.mark === "deafen") hold()
          else setTimeout(goOn, mark.marginMs)
        },
        close: async () => {
          hold()
          if (context.state !== "closed") await context.close()
        },
      })
    } catch {
      return refuse("The sample recording could not be played.")
    }
  }
