/** A recording taken in at the office with the real ear: its utterances' sound is kept, and the ear hears the same words in it. */
import "fake-indexeddb/auto"
import { expect, test } from "vitest"
import { type TakeInTools, takeInFile } from "../../src/app/office/takeIn/takeInFile"
import { makeRecording } from "../../src/cli/makeRecording"
import { openEar } from "../../src/cli/openEar"
import { createIndexedDbClips } from "../../src/record/indexedDbClips"
import { createMemoryStore } from "../../src/record/memoryStore"
import { hearWav } from "../../src/speech/hearSound"
import { realInterpreter, realTools } from "../realTools"

const script = {
  voice: "slt" as const,
  lead: 1,
  lines: ["water", "ten square"].map((text) => ({ text, pause: 2, chatter: false, gainDb: 0 })),
}

test("each kept clip holds the words of its line and no others", async () => {
  const opened = await openEar()
  if (!opened.ok) throw new Error(opened.because)
  const ear = opened.value
  ear.take(realInterpreter().earGrammar({}))
  const clips = createIndexedDbClips("recording")
  const desk: TakeInTools = {
    store: createMemoryStore(),
    tools: realTools(),
    now: () => "2026-03-04T09:00:00+00:00",
    pack: "uk-bs7671",
    openEar: async () => opened,
    told: () => {},
    clips: { clips, opus: false, free: async () => null },
  }
  const { wav } = await makeRecording(script)
  const [taken] = await takeInFile(desk, { file: "hall.wav", bytes: wav, changedMs: Date.UTC(2026, 2, 2) })
  expect(taken?.words).toContain("Its sound is kept on this device.")
  const { lines } = await desk.store.read(taken!.job!)
  const heard = lines.flatMap((line) => (line.type === "heard" ? [line.heard] : []))
  expect(heard.map((one) => one.text)).toEqual(["water", "ten square"])
  for (const one of heard) {
    const clip = (await clips.read({ job: taken!.job!, heard: one.id }))!
    const again = hearWav(clip.sound, ear)
    expect(again.ok && again.value.map((found) => found.text)).toEqual([one.text])
    expect(clip.from).toBeLessThanOrEqual(one.start)
    expect(clip.from + clip.seconds).toBeGreaterThanOrEqual(one.end)
  }
}, 120_000)
