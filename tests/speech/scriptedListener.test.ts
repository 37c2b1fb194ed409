/** The scripted ear keeps the contract, and fails when it is told to. */
import { expect, test } from "vitest"
import { done, refuse } from "../../src/facts/Outcome"
import { createScriptedListener } from "../../src/speech/scriptedListener"
import { describeListener } from "../contracts/listenerContract"

describeListener("the scripted ear", async () => {
  let now = 0
  const listener = createScriptedListener({
    prepares: (grammar) =>
      grammar.jsgf.includes("xyzzyplugh") ? refuse("There is a word I do not know.") : done(undefined),
  })
  return {
    listener,
    say: (text) => {
      listener.say(text, now)
      now += 4
    },
    pause: (seconds) => {
      now += seconds
    },
  }
})

test("it can lose its microphone, and says so in words", async () => {
  const listener = createScriptedListener()
  const told: string[] = []
  await listener.prepare({ id: "any", jsgf: "", pronunciations: [] })
  await listener.start({ heard: () => told.push("heard"), failed: (because) => told.push(because) })
  listener.fail("The microphone is gone.")
  listener.say("yes")
  expect(told).toEqual(["The microphone is gone."])
})
