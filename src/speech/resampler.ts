/**
 * Brings sound of any rate to the rate of the recogniser, piece by piece: a band-limited filter (Kaiser-windowed sinc)
 * read at every place where an output sample falls. A recogniser told a wrong rate hears nothing and says nothing about
 * it, so every sound goes through here, whatever rate it claims.
 */

/** Zero crossings of the sinc on each side: enough for 80 dB with the window below. */
const crossings = 24
const kaiserBeta = 8
/** Table entries between two zero crossings; values between them are interpolated. */
const steps = 256
/** Part of the lower of the two Nyquist rates that is kept. */
const passBand = 0.92

export interface Resampler {
  /** The samples that have become certain; the last few stay inside until more arrives. */
  push(samples: Float32Array): Float32Array
  /** What is still inside. The resampler is empty afterwards. */
  flush(): Float32Array
}

/** Rates in hertz, both above zero. Output sample n lies where input sample n × from / to was. */
export const createResampler = (fromHz: number, toHz: number): Resampler => {
  if (fromHz === toHz) return { push: (samples) => samples, flush: () => new Float32Array(0) }
  const stride = fromHz / toHz
  const cutoff = Math.min(1, toHz / fromHz) * passBand
  const table = sincTable()
  const reach = Math.ceil(crossings / cutoff)
  // The sound starts as if silence had gone before it.
  let held = new Float32Array(reach)
  let next = reach

  const read = (position: number) => {
    const first = Math.ceil(position - reach)
    const last = Math.floor(position + reach)
    let sum = 0
    for (let at = Math.max(first, 0); at <= last; at++) {
      const place = Math.abs(position - at) * cutoff * steps
      const whole = Math.floor(place)
      if (whole >= table.length - 1) continue
      const weight = table[whole]! + (table[whole + 1]! - table[whole]!) * (place - whole)
      sum += held[at]! * weight
    }
    return sum * cutoff
  }

  const push = (samples: Float32Array) => {
    held = join(held, samples)
    const ready = Math.floor((held.length - 1 - reach - next) / stride) + 1
    const out = new Float32Array(Math.max(0, ready))
    for (let n = 0; n < out.length; n++) out[n] = read(next + n * stride)
    next += out.length * stride
    const spent = Math.max(0, Math.floor(next) - reach)
    held = held.slice(spent)
    next -= spent
    return out
  }

  return {
    push,
    flush: () => {
      const out = push(new Float32Array(reach))
      held = new Float32Array(reach)
      next = reach
      return out
    },
  }
}

const join = (one: Float32Array, other: Float32Array) => {
  const both = new Float32Array(one.length + other.length)
  both.set(one)
  both.set(other, one.length)
  return both
}

/** Right half of the windowed sinc. */
const sincTable = () => {
  const table = new Float32Array(crossings * steps + 1)
  for (let n = 0; n < table.length; n++) {
    const x = n / steps
    const sinc = n === 0 ? 1 : Math.sin(Math.PI * x) / (Math.PI * x)
    table[n] = (sinc * bessel(kaiserBeta * Math.sqrt(1 - (x / crossings) ** 2))) / bessel(kaiserBeta)
  }
  return table
}

/** Modified Bessel function of the first kind, order zero, by its series. */
const bessel = (x: number) => {
  let [sum, term] = [1, 1]
  for (let k = 1; term > sum * 1e-12; k++) {
    term *= (x / (2 * k)) ** 2
    sum += term
  }
  return sum
}
