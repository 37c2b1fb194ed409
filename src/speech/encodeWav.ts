/** The plainest WAV file: one channel, 16 bits, 44 bytes of header. What is louder than full scale is flattened. */

/** `samples` are -1 to 1. */
export const encodeWav = (samples: Float32Array, rateHz: number): Uint8Array => {
  const bytes = new Uint8Array(44 + 2 * samples.length)
  const view = new DataView(bytes.buffer)
  const tag = (at: number, text: string) => bytes.set(new TextEncoder().encode(text), at)
  tag(0, "RIFF")
  view.setUint32(4, bytes.length - 8, true)
  tag(8, "WAVEfmt ")
  view.setUint32(16, 16, true)
  view.setUint16(20, 1, true)
  view.setUint16(22, 1, true)
  view.setUint32(24, rateHz, true)
  view.setUint32(28, 2 * rateHz, true)
  view.setUint16(32, 2, true)
  view.setUint16(34, 16, true)
  tag(36, "data")
  view.setUint32(40, 2 * samples.length, true)
  samples.forEach((sample, n) => {
    view.setInt16(44 + 2 * n, Math.max(-32_768, Math.min(32_767, Math.round(sample * 32_768))), true)
  })
  return bytes
}
