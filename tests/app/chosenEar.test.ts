/** The ear that was chosen: nothing but the offline one is made until another is, and the screen knows which listens. */
import { expect, test, vi } from "vitest"
import { ChosenEar, type ChosenEarParts } from "../../src/app/ChosenEar"
import type { EarId } from "../../src/speech/EarId"
import { createScriptedListener } from "../../src/speech/scriptedListener"

const grammar = { id: "g", jsgf: "#JSGF V1.0;\ngrammar g;\npublic <g> = yes;\n", pronunciations: [] }

const open = (first: EarId) => {
  const choice = { id: first }
  const offline = createScriptedListener()
  const browser = createScriptedListener()
  const makeBrowserEar = vi.fn((_options: Parameters<ChosenEarParts["makeBrowserEar"]>[0]) => browser)
  const ear = new ChosenEar({ offline, chosen: () => choice.id, makeBrowserEar })
  const heard: string[] = []
  const start = async () => {
    await ear.prepare(grammar)
    await ear.start({ heard: (one) => heard.push(one.text) })
  }
  return { choice, offline, browser, makeBrowserEar, ear, heard, start }
}

test("as it comes, only the offline ear is ever made", async () => {
  const { ear, offline, makeBrowserEar, heard, start } = open("offline")
  await start()
  offline.say("yes")
  await ear.stop()
  await start()
  expect(heard).toEqual(["yes"])
  expect(makeBrowserEar).not.toHaveBeenCalled()
  expect(ear.name()).toBe("offline ear")
})

test("a choice counts from the next start, and not in the middle of a job's words", async () => {
  const { choice, ear, offline, browser, heard, start } = open("offline")
  await start()
  choice.id = "browser"
  await ear.prepare(grammar)
  offline.say("yes")
  expect(heard).toEqual(["yes"])
  await ear.stop()
  await start()
  browser.say("yes")
  expect(heard).toEqual(["yes", "yes"])
  expect(ear.name()).toContain("browser")
})

test("once the browser's ear has given up, the screen names the offline one, and the next start tries a new one", async () => {
  const { ear, makeBrowserEar, start } = open("device")
  await start()
  expect(makeBrowserEar.mock.calls[0]![0].deviceOnly).toBe(true)
  makeBrowserEar.mock.calls[0]![0].using!("offline")
  expect(ear.name()).toBe("offline ear")
  await ear.stop()
  await start()
  expect(makeBrowserEar).toHaveBeenCalledTimes(2)
})
