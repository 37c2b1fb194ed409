/**
 * `npm run bench -- ear answers [noise …]`: yes and no after a read-back. What counts is that no "no", bare or with the
 * right value, and no name of a part is ever taken for a yes; a yes under the faint margin decides nothing and is asked for again. `SHARE=0.5`
 * takes every second "no" with a number.
 */
import { openEar } from "../../../src/cli/openEar"
import { isFaint } from "../../../src/dialogue/needsYes"
import type { Heard } from "../../../src/facts/Heard"
import { sayNumber } from "../../../src/facts/sayNumber"
import type { Recogniser } from "../../../src/speech/recogniser"
import { noes, yeses } from "../../../src/speech/rivals"
import { createNoiseBed } from "../../audio/noiseBed"
import { grammarUnder, hearWeighed } from "./limits"
import { readNoise, speak, voicesAsked } from "./speakInNoise"
import { takeGrammar } from "./takeGrammar"

const usual = ["quiet", "white20", "white10"]
const rateHz = 16_000
/** Seconds of noise before the words: by then its level has become the background. */
const [before, after] = [3.5, 1.4]

const lengths = Array.from({ length: 26 }, (_, n) => `no ${sayNumber(n + 1)}`)
const sizes = [4, 6, 10, 16, 25, 35].map((mm2) => `no ${sayNumber(mm2)} square`)
const readings = [0.01, 0.04, 0.05, 0.08, 0.12, 0.19, 0.35].map((ohms) => `no ${sayNumber(ohms, 2)}`)
const parts = ["gas", "water", "oil", "steel", "heating", "gas bond", "the gas"]
/** "No" with another value, 39 of them. */
const noWithValue = [...lengths, ...sizes, ...readings]

/** As whom it was taken. */
type Taken = "yes" | "no" | "else" | "again" | "silent"

const takenAs = (heards: readonly Heard[]): Taken => {
  const last = heards.at(-1)
  if (!last) return "silent"
  const isWeak = isFaint(last.margin ?? 0)
  if (yeses.includes(last.text)) return isWeak ? "again" : "yes"
  if (!last.text.startsWith("no ") && !noes.includes(last.text)) return "else"
  return isWeak && noes.includes(last.text) ? "again" : "no"
}

/** Prints a line a noise and kind of answer, and each no that was taken for a yes. Throws where the pack is missing. */
export const runAnswers = async (noises: readonly string[]): Promise<void> => {
  const opened = await openEar()
  if (!opened.ok) throw new Error(opened.because)
  const step = Math.round(1 / Number(process.env.SHARE ?? 1))
  takeGrammar(opened.value, grammarUnder("confirm"))
  for (const noise of noises.length > 0 ? noises : usual) {
    await count(opened.value, { kind: "yes", texts: yeses, noise })
    await count(opened.value, { kind: "no", texts: noes, noise })
    await count(opened.value, { kind: "a part", texts: parts, noise })
    await count(opened.value, { kind: "no with a value", texts: noWithValue.filter((_, n) => n % step === 0), noise })
  }
}

interface Round {
  kind: "yes" | "no" | "no with a value" | "a part"
  texts: readonly string[]
  noise: string
}

const count = async (ear: Recogniser, { kind, texts, noise }: Round): Promise<void> => {
  const counts: Record<Taken, number> = { yes: 0, no: 0, else: 0, again: 0, silent: 0 }
  for (const voice of voicesAsked()) {
    ear.startAnew()
    for (const [seed, text] of texts.entries()) {
      const { heards } = hearWeighed(ear, await inNoise(await speak(text, voice), noise, seed), rateHz)
      const taken = takenAs(heards)
      counts[taken] += 1
      const isFooled = taken === (kind === "yes" ? "no" : "yes")
      const heard = heards.map((one) => `${one.text} (${one.margin})`).join(", ")
      if (isFooled || process.env.TRACE) console.log(`    ${voice}: ${text} → ${heard || "–"}`)
    }
  }
  const { yes, no, else: other, again, silent } = counts
  console.log(
    `${noise.padEnd(9)} ${kind.padEnd(16)} taken as yes ${yes}, as no ${no}, as something else ${other}, ` +
      `asked for again ${again}, silent ${silent}`,
  )
}

const inNoise = async (words: Float32Array, name: string, seed: number): Promise<Float32Array> => {
  const { kind, level } = readNoise(name)
  const from = before * rateHz
  const bed = await createNoiseBed(kind, seed)
  const samples = bed.take(from + words.length + Math.round(after * rateHz)).map((sample) => sample * level)
  for (let n = 0; n < words.length; n++) samples[from + n]! += words[n]!
  return samples
}
