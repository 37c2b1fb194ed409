/**
 * The engine's own way from a log-mel spectrum to cepstra and back, as matrices. The way back is not exact: thirteen
 * cepstra hold a smoothed spectrum of twenty-five bands.
 */

/** Cepstra a frame; every sound model of the engine has as many. */
export const cepstraCount = 13

export interface CepstraTransform {
  bands: number
  /** Rows of cepstra, columns of bands. */
  forward: Float64Array
  /** Rows of bands, columns of cepstra. */
  back: Float64Array
}

/** `lifter` as in the model's settings: cepstrum n is weighted by 1 + lifter / 2 · sin(πn / lifter). */
export const createCepstraTransform = (bands: number, lifter: number): CepstraTransform => {
  const forward = new Float64Array(cepstraCount * bands)
  const back = new Float64Array(bands * cepstraCount)
  for (let n = 0; n < cepstraCount; n++) {
    const weight = lifter === 0 ? 1 : 1 + (lifter / 2) * Math.sin((Math.PI * n) / lifter)
    const norm = Math.sqrt((n === 0 ? 1 : 2) / bands)
    for (let band = 0; band < bands; band++) {
      const base = norm * Math.cos((Math.PI * n * (band + 0.5)) / bands)
      forward[n * bands + band] = base * weight
      back[band * cepstraCount + n] = base / weight
    }
  }
  return { bands, forward, back }
}

/** Matrix with `columns` columns times vector. */
export const multiply = (matrix: Float64Array, vector: ArrayLike<number>, columns: number): Float64Array => {
  const out = new Float64Array(matrix.length / columns)
  for (let row = 0; row < out.length; row++) {
    let sum = 0
    for (let column = 0; column < columns; column++) sum += matrix[row * columns + column]! * vector[column]!
    out[row] = sum
  }
  return out
}
