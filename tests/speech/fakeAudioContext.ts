/** The part of Web Audio that the voice uses, on the test's clock. It can be asleep, lose events, and stop for a call. */

export interface Played {
  at: number
  samples: Float32Array
  rateHz: number
  volume: number
  /** Played to its end. */
  whole: boolean
}

export class FakeAudioContext {
  state: "suspended" | "running" | "closed" = "suspended"
  readonly destination = {}
  readonly played: Played[] = []
  /** Whether a tap has allowed sound; until then asking to resume never settles. */
  allowed = true
  losesEnd = false
  private readonly born = Date.now()

  get currentTime(): number {
    return this.state === "running" ? (Date.now() - this.born) / 1000 : 0
  }

  resume(): Promise<void> {
    if (!this.allowed) return new Promise(() => undefined)
    this.state = "running"
    return Promise.resolve()
  }

  async close(): Promise<void> {
    this.state = "closed"
  }

  createBuffer(_channels: number, length: number, rateHz: number) {
    const samples = new Float32Array(length)
    return { samples, rateHz, copyToChannel: (from: Float32Array) => samples.set(from) }
  }

  createGain() {
    return { gain: { value: 1 }, connect: () => undefined, disconnect: () => undefined }
  }

  createBufferSource() {
    const { played } = this
    const losesEnd = () => this.losesEnd
    let timer: ReturnType<typeof setTimeout> | undefined
    let output: { gain: { value: number } } | null = null
    return {
      buffer: null as { samples: Float32Array; rateHz: number } | null,
      playbackRate: { value: 1 },
      onended: null as (() => void) | null,
      connect<To>(to: To): To {
        output = to as unknown as typeof output
        return to
      },
      start() {
        const { samples, rateHz } = this.buffer!
        const one = { at: Date.now(), samples, rateHz, volume: output!.gain.value, whole: false }
        played.push(one)
        timer = setTimeout(
          () => {
            one.whole = true
            if (!losesEnd()) this.onended?.()
          },
          (1000 * samples.length) / rateHz / this.playbackRate.value,
        )
      },
      stop() {
        clearTimeout(timer)
      },
    }
  }

  get asBrowser(): AudioContext {
    return this as unknown as AudioContext
  }
}
