/**
 * Changes the sound model in place for the noise behind each utterance. The engine has no call for that, but keeps the
 * means as they are in the file; where they lie is looked for once. Making a decoder for each noise would cost 15 MB and
 * a quarter of a second each time, and memory that never comes back.
 */
import { createCepstraTransform } from "./cepstra"
import { compensateMeans } from "./compensateMeans"
import type { EarFiles } from "./EarPack"
import type { Engine, Pointer } from "./engine"
import { hearNoise } from "./hearNoise"
import type { RawDecoder } from "./loadDecoder"
import { readMeans } from "./readMeans"

/** Fits all decoders to the sound that is to be decoded next. */
export type NoiseAdapter = (samples: Float32Array) => void

/**
 * To be called once all of the engine's decoders are loaded. Where the means are not found once for each, one of the
 * places could be memory that was given back, and the model stays as it was trained.
 */
export const createNoiseAdapter = (engine: Engine, files: EarFiles, decoders: RawDecoder[]): NoiseAdapter => {
  const means = readMeans(files.bytes.means)
  const settings = JSON.parse(new TextDecoder().decode(files.bytes["feat_params.json"])) as Record<string, number>
  const places = means ? findFloats(engine.HEAPF32, means.values) : []
  const [decoder] = decoders
  if (!means || !decoder || places.length !== decoders.length) return () => {}
  const transform = createCepstraTransform(settings.nfilt ?? 0, settings.lifter ?? 0)
  return (samples) => {
    const { data, nfeat } = decoder.spectrogram(samples)
    if (nfeat !== transform.bands || data.length === 0) return
    const fitted = compensateMeans(means.values, means, transform, hearNoise({ data, bands: nfeat }))
    for (const place of places) engine.HEAPF32.set(fitted, place)
  }
}

/** Every place, in floats, where the whole run of values lies. */
export const findFloats = (memory: Float32Array, values: Float32Array): Pointer[] => {
  const places: Pointer[] = []
  for (let at = memory.indexOf(values[0]!); at >= 0; at = memory.indexOf(values[0]!, at + 1)) {
    let same = 0
    while (same < values.length && memory[at + same] === values[same]) same++
    if (same === values.length) places.push(at)
  }
  return places
}
