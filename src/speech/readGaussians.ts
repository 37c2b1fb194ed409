/** Means or variances of a sound model file: where its sounds lie and how far they spread. Text, sizes, plain floats. */
import { cepstraCount } from "./cepstra"

/** How the figures lie: for each codebook, three streams (the sound, its change, the change of that). */
export interface ModelLayout {
  codebooks: number
  densities: number
}

export interface Gaussians extends ModelLayout {
  values: Float32Array
}

const magic = 0x11223344
export const streams = 3

/** Null where the model is laid out in another way than the ear knows how to change. */
export const readGaussians = (bytes: Uint8Array): Gaussians | null => {
  const header = new TextDecoder("latin1").decode(bytes.subarray(0, 1000))
  const end = header.indexOf("endhdr\n")
  if (end < 0) return null
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const at = end + "endhdr\n".length
  const whole = (index: number) => view.getInt32(at + 4 * index, true)
  const [codebooks, densities, count] = [whole(1), whole(3), whole(7)]
  const lengths = [whole(4), whole(5), whole(6)]
  if (whole(0) !== magic || whole(2) !== streams || lengths.some((length) => length !== cepstraCount)) return null
  if (count !== codebooks * streams * densities * cepstraCount || bytes.length < at + 32 + 4 * count) return null
  const values = Float32Array.from({ length: count }, (_, n) => view.getFloat32(at + 32 + 4 * n, true))
  return { codebooks, densities, values }
}
