/** The ear pack: what is put in, what is refused, and what stands in where the network fails. */
import { createHash } from "node:crypto"
import { existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterEach, beforeEach, expect, test } from "vitest"
import { makeEarPack } from "../../src/cli/earPack"
import { EarPack, earFileNames } from "../../src/speech/EarPack"

let out: string
const lines: string[] = []
beforeEach(() => {
  out = mkdtempSync(join(tmpdir(), "ear-test-"))
  lines.length = 0
})
afterEach(() => rmSync(out, { recursive: true, force: true }))

const noNetwork = async () => {
  throw Object.assign(new Error("npm failed"), { code: 1 })
}
const make = (words: string[], fetchModel: () => Promise<Uint8Array> = noNetwork) =>
  makeEarPack({ out, words, fetchModel, report: (line) => lines.push(line) })

test("without a network the engine's own model stands in, and one plain line says so", async () => {
  const { pack, fetched } = await make(["water"])
  expect(pack.model).toBe("en-us-8k")
  expect(fetched).toBe(true)
  expect(lines).toEqual([
    expect.stringMatching(/could not be fetched \(npm could not reach it\); the smaller one stands in$/),
  ])
  for (const name of earFileNames) expect(existsSync(join(out, name))).toBe(true)
  expect(readFileSync(join(out, "LICENCE.txt"), "utf8")).toMatch(/Redistribution/)
})

test("the note tells each file's true size and sum", async () => {
  await make(["water"])
  const pack = EarPack.parse(JSON.parse(readFileSync(join(out, "pack.json"), "utf8")))
  for (const name of earFileNames) {
    const bytes = readFileSync(join(out, name))
    expect(pack.files[name]).toEqual({ bytes: bytes.length, sha256: createHash("sha256").update(bytes).digest("hex") })
  }
})

test("a package that is not the known one is not used", async () => {
  const { pack } = await make(["water"], async () => new TextEncoder().encode("something else"))
  expect(pack.model).toBe("en-us-8k")
  expect(lines[0]).toContain("the package is not the one we know")
})

test("the dictionary holds the asked words with all their ways, and nothing else", async () => {
  const { pack, unknownWords } = await make(["what's", "Water", "nought", "xyzzyplugh"])
  const dictionary = readFileSync(join(out, "dictionary.txt"), "utf8").trim().split("\n")
  // The Carnegie Mellon dictionary, as it comes with the engine.
  expect(dictionary).toEqual(["water W AO T ER", "what's W AH T S", "what's(2) HH W AH T S"])
  expect(pack.words).toBe(3)
  expect(unknownWords).toEqual(["nought", "xyzzyplugh"])
})

test("made again with the same words, no file is touched; with others, the dictionary follows", async () => {
  await make(["water"])
  const before = statSync(join(out, "dictionary.txt")).mtimeMs
  await make(["water"])
  expect(statSync(join(out, "dictionary.txt")).mtimeMs).toBe(before)
  await make(["water", "gas"])
  expect(readFileSync(join(out, "dictionary.txt"), "utf8")).toContain("gas G AE S")
})

test("a damaged model is fetched again", async () => {
  await make(["water"])
  writeFileSync(join(out, "means"), "damaged")
  const { pack } = await make(["water"])
  expect(pack.files.means!.bytes).toBeGreaterThan(800_000)
})
