/** The mathematics behind hearing in noise: cepstra there and back, noise told from speech, means moved by noise. */
import { describe, expect, test } from "vitest"
import { cepstraCount, createCepstraTransform, multiply } from "../../src/speech/cepstra"
import { compensateModel, shiftModel } from "../../src/speech/compensateModel"
import { hearNoise } from "../../src/speech/hearNoise"
import { findFloats } from "../../src/speech/modelMemory"
import { readGaussians } from "../../src/speech/readGaussians"
import { createUsualVoice } from "../../src/speech/usualVoice"
import { noiseFrom } from "./madeUpSound"

const transform = createCepstraTransform(25, 22)
const far = (one: ArrayLike<number>, other: ArrayLike<number>) =>
  Array.from(one).reduce((most, x, n) => Math.max(most, Math.abs(x - other[n]!)), 0)

test("a smooth spectrum survives the way to cepstra and back", () => {
  const smooth = Float64Array.from({ length: 25 }, (_, band) => 10 + 3 * Math.cos((Math.PI * 2 * (band + 0.5)) / 25))
  const cepstra = multiply(transform.forward, smooth, 25)
  expect(far(multiply(transform.back, cepstra, cepstraCount), smooth)).toBeLessThan(1e-9)
  expect(cepstra[0]).toBeCloseTo(10 * Math.sqrt(25), 6)
})

/** Half a second of noise, half a second of speech 30 dB above it, in bands that differ. */
const spectrum = () => {
  const noise = noiseFrom(3)
  const frames = 100
  const data = new Float32Array(frames * 25)
  for (let at = 0; at < frames; at++)
    for (let band = 0; band < 25; band++) data[at * 25 + band] = band / 5 + 0.3 * noise() + (at >= 50 ? 6.9 : 0)
  return { data, bands: 25 }
}

test("noise is told from speech, band by band, and how far apart they are", () => {
  const { noise, snrDb, heardMean, cleanMean } = hearNoise(spectrum())
  expect(
    far(
      noise,
      Array.from({ length: 25 }, (_, band) => band / 5),
    ),
  ).toBeLessThan(0.3)
  expect(snrDb).toBeGreaterThan(28)
  expect(snrDb).toBeLessThan(32)
  // What is measured is from thirty frames before the speech on, of which the speech itself is five in eight.
  const ofSpan = heardMean.map((x) => x + 6.9 * (50 / 80 - 50 / 100))
  expect(cleanMean.every((x, band) => x < ofSpan[band]! + 0.3)).toBe(true)
})

test("where something was heard before, that is the noise, and not what hides at the edges", () => {
  const hidden = spectrum()
  for (let n = 0; n < 30 * 25; n++) hidden.data[n] = hidden.data[n]! + 1.5
  const before = spectrum().data.slice(0, 40 * 25)
  const shareOf = ({ noise }: { noise: Float64Array }) =>
    far(
      noise,
      Float64Array.from({ length: 25 }, (_, n) => n / 5),
    )
  expect(shareOf(hearNoise(hidden, before))).toBeLessThan(0.3)
  expect(shareOf(hearNoise(hidden))).toBeGreaterThan(0.6)
  expect(hearNoise(hidden, before).wavers).toBeLessThan(hearNoise(hidden).wavers)
})

/** Powers add up: so the speech is what is left of the mean power, however deep most of its frames lie in the noise. */
test("speech that the noise half drowns is estimated by the power that it adds", () => {
  const frames = 200
  const speechOf = (at: number) => (at >= 60 && at < 140 ? Math.exp(at % 8 === 0 ? 4 : 0) : 0)
  const jitter = noiseFrom(5)
  const data = new Float32Array(frames * 25)
  for (let at = 0; at < frames; at++)
    for (let band = 0; band < 25; band++) data[at * 25 + band] = Math.log(Math.exp(2 + 0.2 * jitter()) + speechOf(at))
  const added = Array.from({ length: frames }, (_, at) => speechOf(at) / frames).reduce((sum, x) => sum + x)
  const { cleanMean } = hearNoise({ data, bands: 25 })
  const falls = Array.from(cleanMean, (x) => Math.log(added) - x)
  expect(Math.max(...falls) - 3).toBeLessThan(1)
  expect(Math.min(...falls) - 3).toBeGreaterThan(-1)
})

describe("means in noise", () => {
  const layout = { codebooks: 1, densities: 2 }
  const sounds = [4, -4].map((tilt) =>
    multiply(
      transform.forward,
      Float64Array.from({ length: 25 }, (_, band) => tilt * Math.cos((Math.PI * band) / 25)),
      25,
    ),
  )
  const changes = Array.from({ length: 4 * cepstraCount }, (_, n) => ((n * 7) % 5) - 2)
  const clean = Float32Array.from([...sounds.flatMap((one) => [...one]), ...changes])
  const level = (db: number) => new Float64Array(25).fill(db)
  const model = { ...layout, values: clean }
  const trained = { ...layout, values: Float32Array.from(clean, (_, n) => 20 + (n % 7)) }
  const jitter = noiseFrom(11)
  const frames = Array.from({ length: 60 }, () => level(0).map(() => 0.01 * jitter()))
  const fittedModel = (noise: number) =>
    compensateModel(model, trained, transform, {
      noise: level(noise),
      noiseFrames: frames,
      heardMean: level(0),
      cleanMean: level(0),
    })
  const fitted = (noise: number) => fittedModel(noise).means

  test("without noise the model stays as it is", () => {
    expect(far(fitted(-60), clean)).toBeLessThan(1e-3)
  })

  test("where noise drowns everything, all sounds are that noise and nothing changes", () => {
    const drowned = fitted(60)
    expect(far(drowned.subarray(0, cepstraCount), drowned.subarray(cepstraCount, 2 * cepstraCount))).toBeLessThan(1e-3)
    expect(far(drowned.subarray(2 * cepstraCount), new Float32Array(4 * cepstraCount))).toBeLessThan(1e-3)
  })

  test("in between, two sounds come nearer to each other", () => {
    const apart = (means: Float32Array) =>
      far(means.subarray(0, cepstraCount), means.subarray(cepstraCount, 2 * cepstraCount))
    expect(apart(fitted(0))).toBeLessThan(apart(clean))
    expect(apart(fitted(0))).toBeGreaterThan(0.1)
  })

  test("sounds vary as they were trained where there is no noise, and less where it drowns them, but never hardly at all", () => {
    expect(far(fittedModel(-60).variances, trained.values)).toBeLessThan(1e-3)
    const drowned = fittedModel(60).variances
    expect(
      far(
        drowned,
        trained.values.map((x) => 0.6 * x),
      ),
    ).toBeLessThan(1e-3)
    const some = fittedModel(0).variances
    expect(some.every((x, n) => x >= 0.6 * trained.values[n]! - 1e-4 && x <= trained.values[n]! + 1)).toBe(true)
  })

  test("in noise that wavers only the sounds themselves are moved, by as much as the voice's usual mean is off", () => {
    const moved = shiftModel(model, trained, transform, { heardMean: level(1), cleanMean: level(3) })
    expect(moved.means[0]! - clean[0]!).toBeCloseTo(2 * Math.sqrt(25), 4)
    expect(far(moved.means.subarray(1, cepstraCount), clean.subarray(1, cepstraCount))).toBeLessThan(1e-4)
    expect(far(moved.means.subarray(2 * cepstraCount), clean.subarray(2 * cepstraCount))).toBe(0)
    expect(moved.variances).toEqual(trained.values)
  })
})

describe("the usual voice", () => {
  const said = (mean: number[], loudness: number, frames = 100) => ({ mean: Float64Array.from(mean), loudness, frames })

  test("is what the first utterance holds, and then what all hold together", () => {
    const voice = createUsualVoice()
    expect([...voice.meanWith(said([1, 2], 5))]).toEqual([1, 2])
    voice.remember(said([1, 2], 5))
    expect([...voice.meanWith(said([3, 2], 5))]).toEqual([2, 2])
    voice.remember(said([3, 2], 5))
    expect([...voice.meanWith(said([2, 5], 5))]).toEqual([2, 3])
  })

  test("is as loud as the utterance at hand", () => {
    const voice = createUsualVoice()
    voice.remember(said([1, 2], 5))
    expect([...voice.meanWith(said([3, 4], 7))]).toEqual([3, 4])
  })

  test("fades: half a minute later it is mostly what was said since", () => {
    const voice = createUsualVoice()
    voice.remember(said([0], 0, 3000))
    for (let n = 0; n < 20; n++) voice.remember(said([1], 0, 300))
    expect(voice.meanWith(said([1], 0, 1))[0]).toBeGreaterThan(0.8)
  })
})

describe("the means of a model file", () => {
  const file = (values: number[], sizes = [0x11223344, 1, 3, 1, 13, 13, 13, values.length]) => {
    const header = new TextEncoder().encode("s3\nversion 1.0\nchksum0 yes\n      endhdr\n")
    const bytes = new Uint8Array(header.length + 4 * (sizes.length + values.length))
    bytes.set(header)
    const view = new DataView(bytes.buffer)
    for (const [n, size] of sizes.entries()) view.setInt32(header.length + 4 * n, size, true)
    for (const [n, value] of values.entries()) view.setFloat32(header.length + 32 + 4 * n, value, true)
    return bytes
  }
  const values = Array.from({ length: 39 }, (_, n) => n / 2)

  test("are read with their layout", () => {
    expect(readGaussians(file(values))).toEqual({ codebooks: 1, densities: 1, values: Float32Array.from(values) })
  })

  test("are left alone where the layout is another", () => {
    expect(readGaussians(file(values, [0x11223344, 1, 1, 1, 39, 0, 0, 39]))).toBeNull()
    expect(readGaussians(file(values).slice(0, 90))).toBeNull()
    expect(readGaussians(new TextEncoder().encode("<!doctype html>"))).toBeNull()
  })
})

test("a run of floats is found wherever all of it lies, and nowhere else", () => {
  const memory = Float32Array.from([1, 2, 3, 1, 2, 4, 1, 2, 3, 1, 2])
  expect(findFloats(memory, Float32Array.from([1, 2, 3]))).toEqual([0, 6])
})
