/**
 * What the ear is tried with: sentences of the product as they are said under each question, and what stands in noise
 * behind them. Limits are fitted on every second phrase (`isForFitting`) and quoted on the others.
 */
import { sayNumber } from "../../../src/facts/sayNumber"
import { productSentences, siteTalk } from "../../audio/earSentences"

export interface Phrase {
  text: string
  /** The question that stands open when it is said, or nothing. */
  asked?: string
  /** Whether it is a sentence of the grammar at all. */
  isOurs: boolean
}

const all = (asked: string | undefined, texts: readonly string[]): Phrase[] =>
  texts.map((text) => ({ text, ...(asked && { asked }), isOurs: true }))

const lengths = [2, 3, 5, 8, 9, 13, 14, 15, 17, 19, 22, 26, 30, 40, 50].map((metres) => `${sayNumber(metres)} metres`)
const sizes = [4, 6, 10, 16, 25, 35].map((mm2) => `${sayNumber(mm2)} square`)
const ohms = [0.01, 0.02, 0.03, 0.05, 0.09, 0.11, 0.18, 0.24, 0.37, 0.46, 0.72, 0.85]
const spokenOhms = ohms.map((value) => `${sayNumber(value, 2)} ohms`)

/** A hundred and sixty sentences of the product. */
export const ourPhrases: readonly Phrase[] = [
  ...all(undefined, productSentences),
  ...all("length", lengths),
  ...all("conductor_csa", sizes),
  ...all("resistance", spokenOhms),
  ...all("distance", ["two hundred millimetres", "four hundred mil", "six hundred millimetres", "three fifty mil"]),
  ...all("confirm", ["yes", "no", "correct", "yep", "that's right", "spot on", "undo", "aye"]),
  ...all("confirm", ["make that twenty six metres", "make that thirteen metres", "no make that ten square"]),
  ...all("confirm", ["make that nought point nought five ohms", "no nought point one two", "no sixteen square"]),
  ...all("confirm", ["say again", "what's left", "pipe cleaned", "clamp fitted"]),
  ...all(undefined, ["pme", "supply neutral thirty five square", "earthing conductor ten square six metres"]),
  ...all(undefined, ["pipe cleaned", "label fitted", "pipe cleaned clamp fitted", "tester proved before"]),
  ...all(undefined, [
    "gas one end disconnected",
    "water one end disconnected",
    "polarity correct",
    "what next",
    "read on",
    "pause",
  ]),
  ...all(undefined, [
    "what's left",
    "say again",
    "undo the last three",
    "gas label fitted",
    "water pipe cleaned",
    "sign it off",
  ]),
  ...all(undefined, [
    "water",
    "gas",
    "oil bond",
    "steel bond sixteen square",
    "heating four square",
    "t t",
    "neutral sixteen square",
  ]),
  ...all(
    undefined,
    lengths.slice(0, 12).map((text, n) => `${["water", "gas", "oil", "steel"][n % 4]} bond ${text}`),
  ),
  ...all(
    undefined,
    spokenOhms.map((text, n) => `${["gas", "water", "oil", "heating"][n % 4]} bond ${text}`),
  ),
  ...all("service", ["water bond", "gas", "steel", "oil", "no gas", "no oil"]),
  ...all("step:clamp_fitted", ["yes", "no", "clamp fitted", "skip"]),
  ...all(undefined, ["water ten square twelve metres", "gas sixteen square nine metres clamp fitted"]),
  ...all(undefined, ["three hundred millimetres from the stopcock", "five hundred mil off the meter", "cable run in"]),
]

const talkUnder = [undefined, "confirm", "conductor_csa", "resistance"]

/** Site talk, the questions taking turns. */
export const foreignPhrases: readonly Phrase[] = siteTalk.map((text, n) => {
  const asked = talkUnder[n % talkUnder.length]
  return { text, ...(asked && { asked }), isOurs: false }
})

export const isForFitting = (index: number): boolean => index % 2 === 0
