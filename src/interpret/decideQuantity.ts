/**
 * From a number to a value of one field, or to a doubt about it: which numbers a field can take, and which forms of
 * speech it may be said in. Nothing is rounded or moved to the nearest size.
 */
import { sizesMm2 } from "../facts/Quantity"
import { unitOf } from "../facts/unitOf"
import type { Claim, ClaimDoubt, MeasuredKind } from "./Claim"
import type { NumberDoubt, NumberReading } from "./NumberReading"

export interface Quantity {
  kind: MeasuredKind
  number: NumberReading
  /** Power of ten that brings the said unit to ours: -3 for milliohms. */
  shift?: number
  /** Whether a unit was said. */
  hasUnit: boolean
  /** Whether this field was the one asked. */
  isAsked: boolean
  isSpokenInFull?: boolean
}

/** Exact value of a reading moved by powers of ten. */
export const shifted = (text: string, powers: number): number =>
  powers === 0 ? Number(text) : Number(`${text}e${powers}`)

/** A claim for the quantity, with a doubt when it may not be written. */
export function decideQuantity(quantity: Quantity, from: number, to: number): Claim {
  const { kind, number } = quantity
  const value = shifted(number.text, quantity.shift ?? 0)
  const doubt = number.doubt ? heardDoubt(quantity, number.doubt) : doubtOf(quantity, value)
  const claim: Claim = { kind, value, unit: unitOf[kind], from, to, isBare: false }
  if (doubt) claim.doubt = doubt
  return claim
}

function heardDoubt({ kind, shift = 0 }: Quantity, { candidates, because }: NumberDoubt): ClaimDoubt {
  return {
    candidates: fitting(
      kind,
      candidates.map((one) => shifted(String(one), shift)),
    ),
    because,
  }
}

/** Candidates a field could not hold are not worth offering. */
function fitting(kind: MeasuredKind, candidates: readonly number[]): number[] {
  const isSize = kind === "conductor_csa" || kind === "neutral_csa"
  return [...new Set(candidates.filter((one) => !isSize || isSold(one)))]
}

export const isSold = (mm2: number): boolean => (sizesMm2 as readonly number[]).includes(mm2)

function doubtOf(quantity: Quantity, value: number): ClaimDoubt | undefined {
  switch (quantity.kind) {
    case "conductor_csa":
    case "neutral_csa":
      return doubtSize(quantity, value)
    case "length":
      return doubtLength(quantity, value)
    case "distance":
      return doubtDistance(quantity, value)
    case "resistance":
      return doubtReading(quantity, value)
    case "fuse_rating":
      return doubtFuse(quantity, value)
  }
}

function doubtSize({ number }: Quantity, value: number): ClaimDoubt | undefined {
  if (number.shape === "digits") {
    const candidates = [value / 10, value].filter(isSold)
    return { candidates, because: "the point or a pause may be missing" }
  }
  if (number.hasThousandsComma) return { candidates: [], because: "no size is called that" }
  if (isSold(value)) return undefined
  const teen = value % 10 === 0 ? value / 10 + 10 : value
  return { candidates: [teen].filter((one) => one !== value && isSold(one)), because: "no size is called that" }
}

function doubtLength({ number, hasUnit, isAsked }: Quantity, value: number): ClaimDoubt | undefined {
  if (number.hasThousandsComma) return { candidates: [value], because: "that is very long" }
  if (number.isSplit) return { candidates: [Number(number.text.at(-1))], because: "the figures came through broken" }
  if (number.shape === "implied" || (number.shape === "digits" && number.spoken))
    return { candidates: [value / 10, value].filter((one) => one < 200), because: "two numbers ran together" }
  if (value === 0) return { candidates: [], because: "a length of nought" }
  if (number.lead === "nothing" || (value < 0.3 && number.lead === "nought" && !isAsked))
    return { candidates: [value], because: "that is very short" }
  if (!hasUnit && number.lead === "nought") return { candidates: [value], because: "that sounds like a reading" }
  if (value > 150 || (value > 100 && !isAsked)) return { candidates: teensOf(value), because: "that is very long" }
  return undefined
}

/** 140 may have been forty or fourteen. */
function teensOf(value: number): number[] {
  const rest = value % 100
  const twin = rest >= 20 && rest % 10 === 0 ? [rest / 10 + 10] : []
  return value < 1000 && rest > 0 ? [...twin, rest, value] : [value]
}

function doubtDistance({ number, hasUnit, isAsked, shift }: Quantity, value: number): ClaimDoubt | undefined {
  if (number.shape === "digits") return { candidates: [value], because: "two numbers ran together" }
  if (number.lead !== null && !hasUnit)
    return { candidates: [shifted(number.text, 3)], because: "a distance is wanted in millimetres" }
  // Said in centimetres it cannot be a size.
  if (value < 40 && (value < 30 || (isSold(value) && shift !== 1)))
    return {
      candidates: isSold(value) || value === 0 ? [value, value * 10].filter((one) => one > 0) : [value],
      because: "that is very close",
    }
  if (value > 3000 || (value > 1500 && !isAsked && !number.hasThousandsComma))
    return { candidates: [value], because: "that is very far" }
  return undefined
}

function doubtReading({ number, hasUnit, isAsked, isSpokenInFull }: Quantity, value: number): ClaimDoubt | undefined {
  if (number.hasThousandsComma)
    return { candidates: [shifted(number.text, -3), value], because: "the comma may be a point" }
  if (number.shape === "digits" || number.shape === "implied")
    return { candidates: [shifted(number.text, -2), value], because: "the point was not heard" }
  if (value === 0) return { candidates: [], because: "a reading of nought" }
  if (number.shape === "fraction" && !hasUnit) return { candidates: [value], because: "half of what was not said" }
  const isFull = number.spoken && number.lead === "nought"
  if (number.places === 1 && value < 1 && !isFull && !isSpokenInFull && number.shape === "decimal")
    return { candidates: [value, shifted(number.text, -1)], because: "a nought may be missing" }
  if (!hasUnit && number.lead === null) {
    const digits =
      String(value).length === 1
        ? [shifted(number.text, -2), shifted(number.text, -1), value]
        : [value, shifted(number.text, -2)]
    return { candidates: digits, because: "no point and no unit were heard" }
  }
  if (!hasUnit && !isAsked && number.lead === "nothing" && number.places < 2)
    return { candidates: [value], because: "no unit was heard" }
  return undefined
}

/** Ratings that supply fuses are commonly made in. Common practice, no source. */
const fuseRatings = [40, 45, 60, 63, 80, 100]

function doubtFuse({ number }: Quantity, value: number): ClaimDoubt | undefined {
  if (number.shape === "digits") return { candidates: [value], because: "two numbers ran together" }
  if (fuseRatings.includes(value)) return undefined
  const ty = value > 12 && value < 20 ? (value - 10) * 10 : null
  return { candidates: ty ? [ty, value] : [value], because: "that is no usual rating" }
}
