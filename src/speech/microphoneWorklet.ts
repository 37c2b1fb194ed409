/**
 * Runs in the sound thread: passes the microphone's samples on in small packets. It computes nothing, so that it is never
 * late, and keeps no more than one packet.
 */
/// <reference types="audioworklet" />
import type { FromWorklet, ToWorklet } from "./earMessages"

/** Samples in one packet: 43 ms at 48 kHz. */
const packetLength = 2048
/** What there is while no source is connected: the ear must go on to the end of an utterance. */
const silence = new Float32Array(128)

class MicrophoneProcessor extends AudioWorkletProcessor {
  private to: MessagePort | null = null
  private packet = new Float32Array(packetLength)
  private filled = 0

  constructor() {
    super()
    this.port.onmessage = ({ data }: MessageEvent<ToWorklet>) => {
      if ("port" in data) this.to = data.port
      else {
        this.flush()
        this.tell(data)
      }
    }
  }

  process([input]: Float32Array[][]): boolean {
    for (const sample of input?.[0] ?? silence) {
      this.packet[this.filled++] = sample
      if (this.filled === packetLength) this.flush()
    }
    return true
  }

  private flush() {
    if (this.filled === 0) return
    const sound = this.packet.slice(0, this.filled)
    this.filled = 0
    this.tell({ sound, rateHz: sampleRate }, [sound.buffer])
  }

  private tell(message: FromWorklet, handOver: Transferable[] = []) {
    this.to?.postMessage(message, handOver)
  }
}

// The name is repeated here as text: a worklet that imports code fails where modules in worklets are not bundled.
registerProcessor("bothhands-microphone", MicrophoneProcessor)
