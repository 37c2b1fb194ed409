/** What the offline ear is tried with: sentences of the product, and sentences that it must let pass. */
import { type FliteVoice, speakToSamples } from "../../src/cli/flite"

/** Forty sentences of the `open` grammar, as a worker says them. */
export const productSentences = [
  "water bond sixteen square",
  "gas bond ten square",
  "oil bond in six mil",
  "structural steel bond twenty five square",
  "lightning protection ten square",
  "heating bond in four mil",
  "earthing conductor in sixteen",
  "main earth in thirty five mil",
  "water fourteen metres",
  "gas bond twenty two metres",
  "nine and a half metres",
  "forty metres of ten mil",
  "seventeen metres of sixteen square",
  "water bond ten square twelve metres",
  "gas ten mil eight metres clamp fitted",
  "two hundred mil off the meter",
  "six hundred millimetres from the stopcock",
  "four fifty past the point of entry",
  "nought point nought five ohms",
  "zero point one three ohms",
  "water nought point one two",
  "gas bond zero point zero four ohms",
  "oil reading nought point two seven",
  "reading zero point one eight",
  "steel bond nought point nought three ohms",
  "over range",
  "test leads open over range",
  "greater than two hundred megohms",
  "leads nulled",
  "one end disconnected",
  "clamp fitted label fitted",
  "connected at the terminal",
  "isolated and proved dead",
  "undo that",
  "read it all back",
  "what size should it be",
  "what should the gas read",
  "correct",
  "supply neutral twenty five square",
  "make that sixteen square",
]

/** Site talk: first what shares no words with the product, then what shares many. None of it may be taken. */
export const siteTalk = [
  "did you see the match last night",
  "pass me the big screwdriver would you",
  "i'll put the kettle on in a minute",
  "have you got the van keys",
  "mind your head on that joist",
  "she said the plumber is coming on thursday",
  "turn the radio down a bit please",
  "there is a parcel for the shop downstairs",
  "it was raining all morning",
  "what time are we having lunch",
  "the traffic on the ring road was terrible",
  "can you hold the torch for me",
  "who left the ladder in the hallway",
  "my brother has a dog called biscuit",
  "watch out there's a nail in that board",
  "i need another coffee before we start",
  "we had fish and chips by the sea",
  "hello there anybody home",
  "thank you very much indeed",
  "well that was a waste of time",
  "is the water off in the kitchen",
  "four of us went to the pub after work",
  "two sugars please and plenty of milk",
  "he paid ten pounds for it on the market",
  "i used to live at number sixteen",
  "a quarter to three should be fine",
  "nine out of ten people prefer tea",
  "oh no not again",
  "yes mate see you later",
  "no idea ask the foreman",
  "the gas man is coming at half past ten",
  "twenty five years i have been doing this",
  "that pipe is older than my grandmother",
  "it cost me a hundred and forty to fix the clutch",
  "the clamp meter is in the other bag",
  "one second two minutes at the most",
  "mind the step it is dead dark in here",
  "there are six boxes in the back of the van",
  "ten to one it is behind the boiler",
  "give me a second to find my glasses",
]

/** How the synthesiser has to be told British and trade words. */
const spellings: readonly (readonly [RegExp, string])[] = [
  [/\bnought\b/g, "naught"],
  [/metres\b/g, "meters"],
  [/\bmegohms\b/g, "megg ohms"],
  [/\bmil\b/g, "mill"],
  [/\bstopcock\b/g, "stop cock"],
]

/** The sentence spoken, with the quiet around it that an endpointer keeps. */
export const speakSentence = async (text: string, voice: FliteVoice) => {
  const spelled = spellings.reduce((sofar, [word, said]) => sofar.replace(word, said), text)
  const { samples, rate } = await speakToSamples(spelled, voice)
  const around = new Float32Array(samples.length + rate)
  around.set(samples, Math.round(0.4 * rate))
  return { samples: around, rateHz: rate }
}

/** White noise of a fixed seed, so many decibels below the speech. */
export const addNoise = (samples: Float32Array, snrDb: number, seed = 1): Float32Array => {
  let state = seed >>> 0
  const even = () => {
    state = (state * 1_664_525 + 1_013_904_223) >>> 0
    return (state + 0.5) / 2 ** 32
  }
  // The quiet that was put around the speech does not count, or the noise would be weaker than it says.
  const power = samples.reduce((sum, x) => sum + x * x, 0) / samples.filter((x) => x !== 0).length
  const level = Math.sqrt(power / 10 ** (snrDb / 10))
  return samples.map((x) => x + level * Math.sqrt(-2 * Math.log(even())) * Math.cos(2 * Math.PI * even()))
}
