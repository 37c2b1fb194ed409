/**
 * Debian's `pocketsphinx` on the same grammar and sound, to compare with: its own 16 kHz model, its own settings, and the
 * words that the product adds. Null where the packages `pocketsphinx` and `pocketsphinx-en-us` are not installed.
 */
import { execFileSync } from "node:child_process"
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import type { EarGrammar } from "../../../src/facts/EarGrammar"
import type { EarFiles } from "../../../src/speech/EarPack"
import { encodeWav } from "../../../src/speech/encodeWav"

const model = "/usr/share/pocketsphinx/model/en-us/en-us"

export const hasPocketsphinx = (): boolean => existsSync("/usr/bin/pocketsphinx_batch") && existsSync(model)

/** What it hears in each sound, in order; empty where it hears nothing. One run of the program. */
export const hearWithPocketsphinx = (
  { jsgf, pronunciations }: EarGrammar,
  files: EarFiles,
  sounds: readonly Float32Array[],
): string[] => {
  const folder = mkdtempSync(join(tmpdir(), "pocketsphinx-"))
  const at = (name: string) => join(folder, name)
  writeFileSync(at("grammar.jsgf"), jsgf)
  writeFileSync(at("words.dict"), addWays(new TextDecoder().decode(files.bytes["dictionary.txt"]), pronunciations))
  writeFileSync(at("list"), sounds.map((_, n) => `${n}\n`).join(""))
  for (const [n, sound] of sounds.entries()) writeFileSync(at(`${n}.wav`), encodeWav(sound, files.pack.rateHz))
  const options = { hmm: model, dict: at("words.dict"), jsgf: at("grammar.jsgf"), ctl: at("list"), hyp: at("heard") }
  const sound = { cepdir: folder, cepext: ".wav", adcin: "yes", adchdr: "44", logfn: "/dev/null" }
  const args = Object.entries({ ...options, ...sound }).flatMap(([name, value]) => [`-${name}`, value])
  execFileSync("/usr/bin/pocketsphinx_batch", args, { stdio: "ignore" })
  // A line is the words, then the name of the file and a score in brackets.
  const lines = readFileSync(at("heard"), "utf8").split("\n")
  rmSync(folder, { recursive: true })
  return sounds.map((_, n) => lines[n]?.replace(/\s*\([^()]*\)\s*$/, "").trim() ?? "")
}

/** Several ways of saying one word are numbered, as the format wants it. */
const addWays = (dictionary: string, pronunciations: EarGrammar["pronunciations"]): string => {
  const lines = dictionary.trim().split("\n")
  const ways = new Map<string, number>()
  for (const line of lines) {
    const word = line.split(/\s/)[0]!.replace(/\(\d+\)$/, "")
    ways.set(word, (ways.get(word) ?? 0) + 1)
  }
  for (const [word, phones] of pronunciations) {
    const way = (ways.get(word) ?? 0) + 1
    ways.set(word, way)
    lines.push(`${way === 1 ? word : `${word}(${way})`} ${phones}`)
  }
  return `${lines.join("\n")}\n`
}
