/** `ear`: everything that is made at build time and never committed: the ear pack, the fallback voice, the sample. */
import { copyFileSync, existsSync, mkdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { fileURLToPath } from "node:url"
import { createInterpreter, type Interpreter } from "../interpret/createInterpreter"
import { jsgfWords } from "../speech/jsgfWords"
import type { Console, ExitStatus } from "./Console"
import { makeEarPack } from "./earPack"
import { readGrammars } from "./readGrammars"
import { readVoiceWords } from "./readVoiceWords"
import { makeVoicePack } from "./voicePack"

const root = fileURLToPath(new URL("../..", import.meta.url))
const served = join(root, ".ear")
const sampleFiles = ["bakery.wav", "bakery.vtt"]

/** Questions after which the ear listens for different words. */
const questions = ["confirm", "conductor_csa", "neutral_csa", "length", "distance", "resistance"]
const moreQuestions = ["earthing_arrangement", "service", "keep_reason", "step:clamp_fitted"]

/** Every word that the ear may be asked to hear, under any question. */
const earWords = (interpreter: Interpreter): string[] => {
  const grammars = [{}, ...[...questions, ...moreQuestions].map((asked) => ({ asked }))]
  return [...new Set(grammars.flatMap((context) => jsgfWords(interpreter.earGrammar(context).jsgf)))]
}

export const makePacks = async (io: Console): Promise<ExitStatus> => {
  const grammars = readGrammars()
  const words = earWords(createInterpreter(grammars))
  const report = (line: string) => io.complain(line)
  const { unknownWords } = await makeEarPack({ out: join(served, "ear"), words, report })
  const pronounced = new Set(
    (grammars["pronunciations.tsv"] ?? "").split("\n").map((line) => line.split("\t")[0]?.toLowerCase()),
  )
  const silent = unknownWords.filter((word) => !pronounced.has(word))
  if (silent.length > 0) {
    io.complain(`No pronunciation for: ${silent.join(", ")}. Add them to grammars/pronunciations.tsv.`)
    return 2
  }
  const voiceWords = readVoiceWords(readFileSync(join(root, "grammars/en-GB/voiceWords.txt"), "utf8"))
  const voice = await makeVoicePack({ words: voiceWords, out: join(served, "voice") })
  if (voice.made) report(`voice: ${voice.words} clips, ${Math.round(voice.bytes / 1000)} kB`)
  mkdirSync(join(served, "samples"), { recursive: true })
  for (const file of sampleFiles) {
    const from = join(root, "samples", file)
    if (existsSync(from)) copyFileSync(from, join(served, "samples", file))
  }
  return 0
}
