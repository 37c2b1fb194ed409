/**
 * `npm run bench -- ear style [noise …]`: the same phrases, grammars and sounds through every ear that is compared.
 * `SHARE=0.25` takes every fourth phrase, `VOICES=slt,rms` those voices.
 */
import { describeAnswers, makeContestants, type Trial } from "./contestants"
import { grammarUnder } from "./limits"
import { foreignPhrases, ourPhrases, type Phrase } from "./phrases"
import { readNoise, speakInNoise, voicesAsked } from "./speakInNoise"

const kinds = ["white", "pink", "babble", "buzz"]
const usual = ["quiet", ...[20, 10, 5].flatMap((db) => kinds.map((kind) => `${kind}${db}`))]
/** Seconds of noise that are kept before and after the words. */
const [before, after] = [0.35, 0.3]

/** Prints one line a noise and ear, for the product's phrases and for what is none. Throws where the pack is missing. */
export const runStyle = async (noises: readonly string[]): Promise<void> => {
  const contestants = await makeContestants()
  for (const noise of noises.length > 0 ? noises : usual)
    for (const [what, phrases] of [["product", ourPhrases] as const, ["site talk", foreignPhrases] as const]) {
      const trials = await trialsOf(phrases, noise)
      for (const [name, hear] of contestants)
        console.log(describeAnswers(`${noise}, ${what}`, name, { trials, answers: await hear(trials) }))
    }
}

const trialsOf = async (phrases: readonly Phrase[], noise: string): Promise<Trial[]> => {
  const share = Number(process.env.SHARE ?? 1)
  const trials: Trial[] = []
  for (const voice of voicesAsked())
    for (const [index, { text, asked }] of phrases.entries()) {
      if (index % 16 >= share * 16) continue
      const { samples, rateHz, from, to } = await speakInNoise(text, voice, readNoise(noise), index)
      const cut = samples.slice(from - before * rateHz, to + after * rateHz)
      trials.push({ text, voice, grammar: grammarUnder(asked), samples: cut })
    }
  return trials
}
