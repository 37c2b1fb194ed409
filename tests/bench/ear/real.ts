/**
 * `npm run bench -- ear real [noise …]`: the ears that are compared, on recordings of real people, and what ours takes out
 * of real talk that is none of the product's. The numbers of the exchange are in the telephone's band, which the sound
 * model was not made for.
 */
import { openEar } from "../../../src/cli/openEar"
import { createEarStream } from "../../../src/speech/earStream"
import { createNoiseBed } from "../../audio/noiseBed"
import { realTools } from "../../realTools"
import { describeAnswers, makeContestants, type Trial } from "./contestants"
import { grammarUnder } from "./limits"
import { exchangeNumbers, type Recording, realTalk, testedNumbers } from "./recordings"
import { readNoise } from "./speakInNoise"
import { takeGrammar } from "./takeGrammar"

const usual = ["quiet", "white20", "white10"]
const rateHz = 16_000
/** Seconds of noise before and after the words. */
const [before, after] = [0.35, 0.3]
/** The questions that stand open while the talk goes on, taking turns. */
const talkUnder = [undefined, "confirm", "length", "resistance"]

/** Prints one line a noise and ear for each kind of recording, then what is taken out of real talk. */
export const runReal = async (noises: readonly string[]): Promise<void> => {
  const contestants = await makeContestants()
  const kinds = [["telephone numbers", exchangeNumbers()] as const, ["sentences", testedNumbers()] as const]
  for (const noise of noises.length > 0 ? noises : usual)
    for (const [what, recordings] of kinds) {
      const trials = await Promise.all(recordings.map((one, seed) => inNoise(one, noise, seed)))
      for (const [name, hear] of contestants) {
        const answers = await hear(trials)
        console.log(describeAnswers(`${noise}, ${what}`, name, { trials, answers }))
        if (process.env.TRACE) for (const [n, { text }] of trials.entries()) trace(text, answers[n])
      }
    }
  await hearTalk()
}

const trace = (text: string, answer: { text: string; margin: number } | null | undefined) => {
  if (answer?.text !== text) console.log(`    ${text} → ${answer ? `${answer.text} (${answer.margin})` : "–"}`)
}

const inNoise = async ({ text, grammar, samples }: Recording, name: string, seed: number): Promise<Trial> => {
  const { kind, level } = readNoise(name)
  const lead = Math.round(before * rateHz)
  const bed = await createNoiseBed(kind, seed)
  const whole = bed.take(lead + samples.length + Math.round(after * rateHz)).map((sample) => sample * level)
  for (let n = 0; n < samples.length; n++) whole[lead + n]! += samples[n]!
  return { text, voice: "recording", grammar, samples: whole }
}

/** What is taken out of talk: words that the ear believed, and facts that these would have written without a yes. */
const hearTalk = async (): Promise<void> => {
  const opened = await openEar()
  if (!opened.ok) throw new Error(opened.because)
  const { interpret } = realTools()
  const stream = createEarStream(opened.value, () => "bench")
  const bed = await createNoiseBed("pink", 1)
  const still = readNoise("pink40").level
  let [files, seconds, asked] = [0, 0, 0]
  const taken: string[] = []
  for (const [n, { name, samples }] of realTalk().entries()) {
    const question = talkUnder[n % talkUnder.length]
    takeGrammar(opened.value, grammarUnder(question))
    files += 1
    seconds += samples.length / rateHz
    const whole = bed.take(samples.length + 2 * rateHz).map((sample) => sample * still)
    for (let at = 0; at < samples.length; at++) whole[at]! += samples[at]!
    for (const { heard } of [...stream.push(whole, rateHz), ...stream.finish()]) {
      const { facts } = interpret(heard, question ? { asked: question } : {})
      if ((heard.margin ?? 0) < 1) asked += 1
      else taken.push(`${name}: ${heard.text} (${heard.margin}), ${facts.length} facts`)
    }
  }
  console.log(
    `real talk: ${files} files, ${(seconds / 60).toFixed(0)} minutes: ${taken.length} taken, ${asked} in doubt`,
  )
  for (const one of taken) console.log(`  ${one}`)
}
