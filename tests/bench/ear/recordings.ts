/**
 * Recordings of real people that Debian carries: numbers and prompts of a telephone exchange (`asterisk-core-sounds-en-wav`,
 * one woman, at 8 kHz and so without anything above the telephone's band), and sentences that pocketsphinx is tested with
 * (`pocketsphinx-testdata`, five people). Nothing of them is kept in this project; where a package is missing there are
 * none.
 */
import { existsSync, readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { findSpeech, levelOf } from "../../../src/cli/trimSpeech"
import type { EarGrammar } from "../../../src/facts/EarGrammar"
import { readWav } from "../../../src/speech/readWav"
import { resample } from "../../../src/speech/resample"
import { grammarUnder } from "./limits"

export interface Recording {
  name: string
  /** What is said in it. */
  text: string
  grammar: EarGrammar
  /** The words alone, at 16 kHz, as loud as the made voices are. */
  samples: Float32Array
}

const exchange = "/usr/share/asterisk/sounds/en"
const tested = "/usr/share/pocketsphinx/test/data"
const rateHz = 16_000
/** The same loudness as that of the made voices. */
const level = 0.08

const ones = "one two three four five six seven eight nine".split(" ")
const teens = "ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(" ")
const tens = "twenty thirty forty fifty sixty seventy eighty ninety".split(" ")
/** Seconds between the tens and the ones where a number is joined from two recordings, as the exchange joins them. */
const gap = 0.05

/** One to ninety-nine, against the grammar of the product that a bare length is heard with. */
export const exchangeNumbers = (): Recording[] => {
  if (!existsSync(join(exchange, "digits"))) return []
  const grammar = grammarUnder("length")
  const file = (value: number) => readWords(join(exchange, "digits", `${value}.wav`))
  const single = [...ones, ...teens].map((text, n) => ({ text, samples: file(n + 1) }))
  const round = tens.map((text, n) => ({ text, samples: file(20 + 10 * n) }))
  const joined = round.flatMap((ten) =>
    single
      .slice(0, 9)
      .map((one) => ({ text: `${ten.text} ${one.text}`, samples: joinWords(ten.samples, gap, one.samples) })),
  )
  return [...single, ...round, ...joined].map((one) => ({ ...one, name: one.text, grammar }))
}

const anyNumbers: EarGrammar = {
  id: "numbersOnly",
  jsgf: `#JSGF V1.0;\ngrammar numbersOnly;\npublic <said> = (zero | oh | ${ones.join(" | ")})+;\n`,
  pronunciations: [],
}
const cards: EarGrammar = {
  id: "cards",
  jsgf:
    "#JSGF V1.0;\ngrammar cards;\npublic <said> = (<rank> [of <suit>])+;\n<suit> = clubs | hearts | diamonds | spades;\n" +
    "<rank> = ace | two | three | four | five | six | seven | eight | nine | ten | jack | queen | king | lady;\n",
  // From the CMU dictionary, as Debian's pocketsphinx-en-us has it.
  pronunciations: [
    ["of", "AH V"],
    ["clubs", "K L AH B Z"],
    ["hearts", "HH AA R T S"],
    ["diamonds", "D AY M AH N D Z"],
    ["spades", "S P EY D Z"],
    ["ace", "EY S"],
    ["jack", "JH AE K"],
    ["queen", "K W IY N"],
    ["king", "K IH NG"],
    ["lady", "L EY D IY"],
  ],
}
const walk: EarGrammar = {
  id: "walk",
  jsgf: `#JSGF V1.0;\ngrammar walk;\npublic <said> = go (forward | backward) (${ones.join(" | ")} | ten) [meter | meters];\n`,
  pronunciations: [
    ["go", "G OW"],
    ["forward", "F AO R W ER D"],
    ["backward", "B AE K W ER D"],
    ["meters", "M IY T ER Z"],
  ],
}

/** Numbers in sentences, with the words that the package says they hold. */
export const testedNumbers = (): Recording[] => {
  if (!existsSync(tested)) return []
  const list = readFileSync(join(tested, "cards/cards.transcription"), "utf8").matchAll(/<s>(.*)<\/s>\s*\((\d+)\)/g)
  const ofCards = [...list].map(([, text, file]) => ({
    name: `cards/${file}`,
    text: text!.trim(),
    grammar: cards,
    samples: readWords(join(tested, "cards", `${file}.wav`)),
  }))
  const two = "tidigits/dhd.2934z.raw"
  const digits = { name: two, text: "two nine three four zero", grammar: anyNumbers, samples: readRaw(two) }
  const on = { name: "goforward.raw", text: "go forward ten meters", grammar: walk, samples: readRaw("goforward.raw") }
  return [...ofCards, digits, on]
}

/** Talk that is no sentence of the product, in files that hold one sentence or a few. */
export const realTalk = (): { name: string; samples: Float32Array }[] => {
  const folders = [exchange, join(exchange, "phonetic"), join(exchange, "dictate"), join(tested, "librivox")]
  return folders.filter(existsSync).flatMap((folder) =>
    readdirSync(folder)
      .filter((file) => file.endsWith(".wav"))
      .sort()
      .map((file) => ({ name: file, samples: readWords(join(folder, file)) })),
  )
}

const readWords = (path: string): Float32Array => {
  const read = readWav(new Uint8Array(readFileSync(path)))
  if (!read.ok) throw new Error(`${path}: ${read.because}`)
  return onlyWords(resample(read.value.samples, read.value.rateHz, rateHz))
}

/** Plain 16-bit samples at 16 kHz. */
const readRaw = (name: string): Float32Array => {
  const bytes = new Uint8Array(readFileSync(join(tested, name)))
  const view = new DataView(bytes.buffer)
  return onlyWords(Float32Array.from({ length: bytes.length / 2 }, (_, n) => view.getInt16(2 * n, true) / 2 ** 15))
}

const onlyWords = (samples: Float32Array): Float32Array => {
  const { from, to } = findSpeech(samples, rateHz)
  const words = samples.slice(from, to)
  const gain = level / (levelOf(words) || 1)
  return words.map((sample) => sample * gain)
}

const joinWords = (before: Float32Array, seconds: number, after: Float32Array): Float32Array => {
  const quiet = Math.round(seconds * rateHz)
  const whole = new Float32Array(before.length + quiet + after.length)
  whole.set(before)
  whole.set(after, before.length + quiet)
  return whole
}
