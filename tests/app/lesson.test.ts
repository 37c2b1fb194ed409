/** The first lesson on the real loop: each sentence does what its step says. */
import { expect, test } from "vitest"
import { lessonSteps } from "../../src/app/lesson/lessonSteps"
import { createLessonStore, practiceJob } from "../../src/app/lesson/lessonStore"
import { emptyDialogue } from "../../src/dialogue/emptyDialogue"
import { step } from "../../src/dialogue/step"
import { realTools } from "../realTools"

const at = "2026-03-02T09:14:00.000+00:00"

test("said in order, every step is done by its own words and not before", async () => {
  const { lines } = await (await createLessonStore(at)).read(practiceJob)
  let count = 0
  const tools = { ...realTools(), newId: () => `id-${++count}` }
  const take = (event: Parameters<typeof step>[1]) => {
    state = step(state, event, tools).state
  }
  let state = emptyDialogue("practice")
  take({ type: "resumed", lines, at })
  for (const one of lessonSteps) {
    expect(one.isDone(state), `before “${one.words}”`).toBe(false)
    const heard = { id: `h${count}`, text: one.words, alternatives: [], words: [], start: 0, end: 1, margin: 8 }
    take({ type: "heard", heard: { ...heard, engine: "offline" }, at })
    if (one.words.includes("ohms")) {
      expect(one.isDone(state)).toBe(false)
      take({ type: "tapped", act: { kind: "confirm", value: true }, at })
    }
    expect(one.isDone(state), `after “${one.words}”`).toBe(true)
  }
})
