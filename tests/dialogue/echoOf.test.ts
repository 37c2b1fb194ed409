/** The app's own words, heard again, change nothing; a short true answer is never thrown away as an echo. */
import { readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { expect, test } from "vitest"
import { parse } from "yaml"
import { echoOf } from "../../src/dialogue/echoOf"
import { step } from "../../src/dialogue/step"
import type { Tools } from "../../src/dialogue/Tools"
import type { Heard } from "../../src/facts/Heard"
import { Dialogue, play } from "../dialogues/runDialogue"
import { realTools } from "../realTools"

const folder = join(import.meta.dirname, "../dialogues")
const dialogues = readdirSync(folder)
  .filter((file) => file.endsWith(".yaml"))
  .map((file) => [file, Dialogue.parse(parse(readFileSync(join(folder, file), "utf8")))] as const)

const heard = (text: string, id: string): Heard => ({
  id,
  text,
  alternatives: [],
  words: [],
  start: 0,
  end: 1,
  engine: "scripted",
  margin: null,
})

test.each(dialogues)("%s: every answer fed back as heard leaves the record as it was", (_, dialogue) => {
  let count = 0
  const tools: Tools = { ...realTools(), newId: () => `echo${++count}` }
  play(dialogue, tools, (state, said, at) => {
    for (const words of [...said, said.join(" ")]) {
      const after = step(state, { type: "heard", at, heard: heard(words, `h${++count}`) }, tools).state
      expect(after.record.entries, words).toEqual(state.record.entries)
      expect(after.record.signedOff, words).toEqual(state.record.signedOff)
      expect(after.loneWorker.phase, words).toBe(state.loneWorker.phase)
      expect(after.preferences, words).toEqual(state.preferences)
    }
  })
})

test.each([
  ["Water. Nought point nought five ohms. Is that it?", "yes", null],
  ["Water. Nought point nought five ohms. Is that it?", "nought point nought five", null],
  ["Water. Nought point nought five ohms. Is that it?", "water nought point nought five ohms is that it", "whole"],
  ["Water. Nought point nought five ohms. Is that it?", "nought point nought five ohms", "part"],
  ["Water. Ten square.", "water ten square", "whole"],
  ["Water. Ten square.", "ten square", null],
  ["", "ten square", null],
])("after %j, %j is an echo: %s", (said, words, echo) => {
  expect(echoOf([said], words)).toBe(echo)
})
