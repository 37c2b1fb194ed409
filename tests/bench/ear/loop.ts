/**
 * `npm run bench -- ear loop [entries [noise …]]`: the loop in noise. A simulated worker reports entries, hears each
 * read-back and answers it, all as sound through the same noisy ear and the real dialogue; beside it, the same loop with
 * an ear that believes every answer. A noise is `quiet`, or a kind and its decibels: `white20`, `babble10`.
 */
import type { FliteVoice } from "../../../src/cli/flite"
import { seededRandom } from "../../../src/cli/grammarTools"
import { openEar, readEarFiles } from "../../../src/cli/openEar"
import type { RecordedFact } from "../../../src/facts/Fact"
import { createNoiseBed } from "../../audio/noiseBed"
import { earGrammar } from "../../audio/wholeGrammar"
import { realTools } from "../../realTools"
import { createBareEar } from "./bareEar"
import { bakeryParts, entriesOfJob, type PartOfJob, type SpokenEntry } from "./entriesOfJob"
import { type Habits, inHabit, isMeant, isSame, newHabits, nextWords } from "./nextWords"
import { settledFacts } from "./settledFacts"
import { type LoopEar, SoundLoop } from "./soundLoop"
import { readNoise, speak, voicesAsked } from "./speakInNoise"

const usual = ["quiet", "white20", "white10", "pink10", "babble10", "buzz10"]
/** Turns after which the worker gives an entry up and types it. */
const mostTurns = 8

interface Tally {
  entries: number
  /** Sentences spoken, and those among them that were the yes that a reading always needs. */
  turns: number
  dutiful: number
  givenUp: number
  wrong: string[]
  /** Entries that the worker took for written and that were not. */
  lost: string[]
  /** Read back wrong at first, and then put right. */
  offeredWrong: number
}

/** What was said, heard and answered: `TRACE=1` shows every turn. */
const trace = (said: string, { heards, words, gotIt }: SoundLoop) => {
  const heard = heards.map((one) => `${one.text} (${one.margin})`).join(", ")
  console.log(`    ${said} → ${heard || "–"} → ${words.join(" ") || (gotIt ? "♪" : "–")}`)
}

/** Who speaks, and what he was told until now. */
interface Worker {
  voice: FliteVoice
  habits: Habits
}

/** One entry from its first word until it is down or given up. */
const report = async (loop: SoundLoop, part: PartOfJob, entry: SpokenEntry, { voice, habits }: Worker) => {
  const isFirst = loop.state.item !== part.item
  const said: string[] = []
  let words: string | null = inHabit(isFirst ? entry.full : entry.bare, habits, entry)
  let offeredWrong = false
  while (words !== null && said.length < mostTurns) {
    said.push(words)
    loop.say(await speak(words, voice))
    const last = { said: words, words: loop.words, gotIt: loop.gotIt }
    offeredWrong ||= loop.readBackFacts().some((fact) => !isMeant(fact, part))
    words = nextWords({ state: loop.state, last, part, entry, habits })
    if (process.env.TRACE) trace(said.at(-1)!, loop)
  }
  return { said, givenUp: words !== null, offeredWrong }
}

/** A loop that has just been opened, in this noise. */
const openLoop = async (ear: LoopEar, noise: string, seed: number): Promise<SoundLoop> => {
  const { kind, level } = readNoise(noise)
  const bed = await createNoiseBed(kind, seed)
  let ids = 0
  return new SoundLoop({
    ear,
    tools: { ...realTools(), newId: () => `${++ids}` },
    earGrammar,
    noise: (length) => bed.take(length).map((sample) => sample * level),
  })
}

const emptyTally = (): Tally => ({
  entries: 0,
  turns: 0,
  dutiful: 0,
  givenUp: 0,
  wrong: [],
  lost: [],
  offeredWrong: 0,
})

/** All entries of one part, counted. */
const reportPart = async (loop: SoundLoop, part: PartOfJob, worker: Worker, tally: Tally): Promise<void> => {
  for (const entry of part.entries) {
    const { said, givenUp, offeredWrong } = await report(loop, part, entry, worker)
    tally.entries += 1
    tally.turns += said.length
    if (entry.fact.kind === "resistance" && !givenUp) tally.dutiful += 1
    if (givenUp) tally.givenUp += 1
    if (offeredWrong) tally.offeredWrong += 1
    const settled = settledFacts(loop.state)
    if (!givenUp && !settled.some((fact) => isSame(fact, entry.fact)))
      tally.lost.push(`${worker.voice}: ${said.join(" / ")}`)
  }
}

const runJobs = async (ear: LoopEar, count: number, noise: string): Promise<Tally> => {
  const tally = emptyTally()
  const voices = voicesAsked()
  // Each voice is one worker, who does one job after the other and keeps to what he was told.
  const habits = new Map(voices.map((voice) => [voice, newHabits()]))
  for (let job = 0; tally.entries < count; job++) {
    const part = entriesOfJob(seededRandom(job + 1))
    const voice = voices[job % voices.length]!
    const loop = await openLoop(ear, noise, job)
    await reportPart(loop, part, { voice, habits: habits.get(voice)! }, tally)
    const wrong = settledFacts(loop.state).filter((fact) => !isMeant(fact, part))
    tally.wrong.push(...wrong.map((fact) => `${voice}, ${part.name}: ${JSON.stringify(fact)}`))
  }
  return tally
}

/** The bonds of the sample job by every voice that is asked for, in each noise. Throws where the ear pack is missing. */
export const runSampleJob = async (noises: readonly string[]): Promise<void> => {
  const opened = await openEar()
  if (!opened.ok) throw new Error(opened.because)
  for (const noise of noises.length > 0 ? noises : ["quiet", "babble15"])
    for (const [seed, voice] of voicesAsked().entries()) {
      const tally = emptyTally()
      const loop = await openLoop(opened.value, noise, seed)
      const habits = newHabits()
      for (const part of bakeryParts()) await reportPart(loop, part, { voice, habits }, tally)
      const isOfJob = (fact: RecordedFact) => bakeryParts().some((part) => isMeant(fact, part))
      tally.wrong.push(...settledFacts(loop.state).flatMap((fact) => (isOfJob(fact) ? [] : [JSON.stringify(fact)])))
      show(noise, voice, tally)
    }
}

const show = (noise: string, ear: string, { entries, turns, dutiful, ...rest }: Tally) => {
  const share = (count: number) => `${((100 * count) / entries).toFixed(1)} %`
  console.log(
    `${noise.padEnd(9)} ${ear.padEnd(16)} ${rest.wrong.length} wrong written, ${rest.lost.length} lost, ` +
      `${((turns - dutiful) / entries).toFixed(2)} turns (${(turns / entries).toFixed(2)} with the yes of a reading), ` +
      `${share(rest.givenUp)} given up, ${share(rest.offeredWrong)} read back wrong at first; ${entries} entries`,
  )
  for (const one of rest.wrong) console.log(`            wrong  ${one}`)
  for (const one of rest.lost) console.log(`            lost   ${one}`)
}

/** Prints the table. Throws where the ear pack is missing. */
export const runLoopInNoise = async ([count = "100", ...noises]: string[]): Promise<void> => {
  const opened = await openEar()
  if (!opened.ok) throw new Error(opened.because)
  const bare = process.env.ALONE ? null : await createBareEar({ files: readEarFiles(), fitted: true })
  for (const noise of noises.length > 0 ? noises : usual) {
    show(noise, "ours", await runJobs(opened.value, Number(count), noise))
    if (bare) show(noise, "without margins", await runJobs(bare, Number(count), noise))
  }
}
