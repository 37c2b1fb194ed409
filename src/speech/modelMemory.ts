/**
 * The engine's sound model, changed in place. The engine has no call for that, but keeps the means as they are in the file
 * and the variances in a form of its own; where they lie is looked for once. Making a decoder for each noise would cost
 * 15 MB and a quarter of a second each time, and memory that never comes back. Written against soundswallower 0.6.3.
 */
import { cepstraCount as size } from "./cepstra"
import type { SoundModel } from "./compensateModel"
import type { Engine, Pointer } from "./engine"

export interface ModelMemory {
  write(model: SoundModel): void
}

/** The engine's logarithms have this base. */
const perNat = 1 / Math.log(1.0001)
/** Its own least variance. */
const leastVariance = 1e-4

/**
 * To be called once all of the engine's decoders are loaded. Null where the model as it was trained is not found once for
 * each: one of the places could be memory that was given back.
 */
export const findModelMemory = (engine: Engine, trained: SoundModel, decoders: number): ModelMemory | null => {
  const asTrained = toEngine(trained.variances)
  const parts = [trained.means, asTrained.precisions, asTrained.norms].map((values) =>
    findFloats(engine.HEAPF32, values),
  )
  if (parts.some((places) => places.length !== decoders)) return null
  const [means, spreads, sums] = parts
  return {
    write: (model) => {
      const { precisions, norms } = model.variances === trained.variances ? asTrained : toEngine(model.variances)
      for (const place of means!) engine.HEAPF32.set(model.means, place)
      for (const place of spreads!) engine.HEAPF32.set(precisions, place)
      for (const place of sums!) engine.HEAPF32.set(norms, place)
    },
  }
}

/** Half of one over each variance, and for each sound the logarithm of what its density is divided by. */
const toEngine = (variances: Float32Array) => {
  const precisions = new Float32Array(variances.length)
  const norms = new Float32Array(variances.length / size)
  for (let at = 0; at < variances.length; at++) {
    const variance = Math.max(variances[at]!, leastVariance)
    const sound = Math.floor(at / size)
    precisions[at] = Math.trunc(perNat / (2 * variance))
    norms[sound] = norms[sound]! + Math.trunc(Math.log(1 / Math.sqrt(variance * 2 * Math.PI)) * perNat)
  }
  return { precisions, norms }
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
