/**
 * `npm run bench -- ear`: how well the offline ear hears the product's sentences and lets site talk pass, in quiet and in
 * white noise, and what it costs. Synthetic voices: real ones differ more, and rooms echo. Takes some minutes. A word after it names
 * another bench of the ear: loop, answers, limits, fit, style, real, job, memory.
 */
import { readFileSync } from "node:fs"
import { join } from "node:path"
import { gzipSync } from "node:zlib"
import { fliteVoices } from "../../src/cli/flite"
import { earPackFolder, openEar } from "../../src/cli/openEar"
import type { Heard } from "../../src/facts/Heard"
import { EarPack, earFileNames } from "../../src/speech/EarPack"
import { createEarStream } from "../../src/speech/earStream"
import type { Recogniser } from "../../src/speech/recogniser"
import { addNoise, productSentences, siteTalk, speakSentence } from "../audio/earSentences"
import { earGrammar } from "../audio/wholeGrammar"
import { runAnswers } from "./ear/answers"
import { runFit } from "./ear/fit"
import { runLimits } from "./ear/limits"
import { runLoopInNoise, runSampleJob } from "./ear/loop"
import { runMemory } from "./ear/memory"
import { runReal } from "./ear/real"
import { runStyle } from "./ear/style"

const levels = [null, 20, 10] as const

const hear = (ear: Recogniser, samples: Float32Array, rateHz: number): Heard[] => {
  const stream = createEarStream(ear, () => "bench")
  return [...stream.push(samples, rateHz), ...stream.finish()].map((one) => one.heard)
}

const judge = (text: string, heards: Heard[]) => {
  if (heards.length === 0) return "silent"
  if (heards.some((one) => (one.margin ?? 0) < 1)) return "asked"
  return heards.map((one) => one.text).join(" ") === text ? "exact" : "wrong"
}

const printSize = () => {
  const pack = EarPack.parse(JSON.parse(readFileSync(join(earPackFolder, "pack.json"), "utf8")))
  const all = earFileNames.map((name) => readFileSync(join(earPackFolder, name)))
  const megabytes = (bytes: number) => (bytes / 1e6).toFixed(1)
  const raw = all.reduce((sum, bytes) => sum + bytes.length, 0)
  const packed = all.reduce((sum, bytes) => sum + gzipSync(bytes).length, 0)
  console.log(
    `pack ${pack.model}: ${megabytes(raw)} MB, ${megabytes(packed)} MB compressed, ${pack.words} dictionary lines`,
  )
}

/** Prints what it finds. Throws where the pack is missing. */
export const run = async ([what, ...args]: string[]) => {
  if (what === "loop") return runLoopInNoise(args)
  if (what === "limits") return runLimits(args)
  if (what === "answers") return runAnswers(args)
  if (what === "fit") return runFit(args)
  if (what === "style") return runStyle(args)
  if (what === "real") return runReal(args)
  if (what === "job") return runSampleJob(args)
  if (what === "memory") return runMemory(args)
  const opened = await openEar()
  const taken = opened.ok ? opened.value.take(earGrammar()) : opened
  if (!opened.ok || !taken.ok) throw new Error(taken.ok ? "" : taken.because)
  printSize()
  let [spokenSeconds, workSeconds] = [0, 0]
  const tally = async (sentences: readonly string[], snrDb: number | null, expected: boolean) => {
    const counts = { exact: 0, wrong: 0, asked: 0, silent: 0 }
    for (const voice of fliteVoices)
      for (const text of sentences) {
        const { samples, rateHz } = await speakSentence(text, voice)
        const began = process.cpuUsage()
        const heards = hear(opened.value, snrDb === null ? samples : addNoise(samples, snrDb), rateHz)
        workSeconds += process.cpuUsage(began).user / 1e6
        spokenSeconds += samples.length / rateHz
        const verdict = judge(text, heards)
        counts[verdict] += 1
        if (verdict === "wrong")
          console.log(
            `  ${expected ? "wrong" : "taken"} ${voice}: ${text} → ${heards.map((one) => `${one.text} (${one.margin})`).join(", ")}`,
          )
      }
    return counts
  }
  for (const snrDb of levels) {
    const { exact, wrong, asked, silent } = await tally(productSentences, snrDb, true)
    const name = snrDb === null ? "no noise" : `${snrDb} dB`
    console.log(`product, ${name}: ${exact} exact, ${wrong} wrong, ${asked} asked, ${silent} silent`)
  }
  for (const snrDb of levels) {
    const { wrong, asked, silent } = await tally(siteTalk, snrDb, false)
    const name = snrDb === null ? "no noise" : `${snrDb} dB`
    console.log(`site talk, ${name}: ${wrong} taken, ${asked} asked about, ${silent} let pass`)
  }
  console.log(`${(workSeconds / spokenSeconds).toFixed(3)} s of one core for a second of sound`)
}
