/** Stretches of sound one after the other, as one. */
export const joinSamples = (parts: readonly Float32Array[]): Float32Array<ArrayBuffer> => {
  const whole = new Float32Array(parts.reduce((sum, part) => sum + part.length, 0))
  let at = 0
  for (const part of parts) {
    whole.set(part, at)
    at += part.length
  }
  return whole
}
