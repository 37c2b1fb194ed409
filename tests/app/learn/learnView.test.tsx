// @vitest-environment happy-dom
/** The screen that learns a voice, worked by hand with a scripted ear. */
import { act } from "react"
import { afterEach, beforeEach, expect, test } from "vitest"
import { prompts } from "../../../src/app/learn/prompts"
import { madeUpViews } from "../madeUpViews"
import { button, clearPage, find, layPage, open, settle, tap, words } from "../page"

beforeEach(layPage)
afterEach(clearPage)

const begin = async () => {
  const session = open(madeUpViews.start(), "learn")
  tap(/^Start reading$/)
  await settle()
  const { reader } = session
  const read = (text: string, short?: number) => act(() => reader!.read(text, short))
  const wait = () => act(() => reader!.wait())
  return { session, read, wait, mumble: () => act(() => reader!.mumble()) }
}

test("each prompt stands large with its number, is ticked when heard, and is asked for again when not", async () => {
  const { read, wait, mumble } = await begin()
  expect(words(".learn-card h2")).toEqual([prompts[0]])
  expect(words(".kicker")).toEqual(["1 of 20"])
  expect(words(".learn-told")).toEqual(["Read it aloud"])
  mumble()
  wait()
  expect(words(".learn-told")).toEqual(["Say it again"])
  read(prompts[0])
  expect(words(".learn-told")).toEqual(["Heard"])
  wait()
  expect(words(".learn-card h2")).toEqual([prompts[1]])
  expect(find<HTMLProgressElement>("progress")?.value).toBe(1)
})

test("read to the end, it says in words what was learnt, and it can be forgotten", async () => {
  const { session, read, wait } = await begin()
  for (const prompt of prompts) {
    read(prompt, 3)
    wait()
  }
  expect(words(".lesson-card").join()).toContain("20 of 20 sentences heard")
  expect(words(".lesson-card").join()).toContain("It will ask you less often")
  expect(session.settings.snapshot().voiceFit).not.toBeNull()
  tap(/^Forget my voice$/)
  expect(session.settings.snapshot().voiceFit).toBeNull()
  expect(words(".lesson-card").join()).toContain("Your voice is forgotten.")
})

test("all skipped, nothing is changed, and it can be begun again", async () => {
  const { session } = await begin()
  for (const _ of prompts) tap(/^Skip$/)
  expect(words(".lesson-card").join()).toContain("Only 0 sentences were heard, and it takes 12.")
  expect(session.settings.snapshot().voiceFit).toBeNull()
  tap(/^Read again$/)
  await settle()
  expect(words(".learn-card h2")).toEqual([prompts[0]])
})

test("stopped, the way in stands there again and the microphone is given back", async () => {
  const { session } = await begin()
  tap(/^Stop$/)
  expect(button(/^Start reading$/)).toBeTruthy()
  expect(session.reader?.isListening).toBe(false)
})

test("nothing that is said while it learns is sent to the job's loop", async () => {
  const { session, read, wait } = await begin()
  for (const prompt of prompts) {
    read(prompt)
    wait()
  }
  expect(session.asked).toEqual([["startLearning"]])
})

test("leaving the screen gives the microphone back", async () => {
  const { session } = await begin()
  expect(session.reader?.isListening).toBe(true)
  await act(async () => {
    window.location.hash = "settings"
    window.dispatchEvent(new Event("hashchange"))
  })
  expect(session.reader?.isListening).toBe(false)
})

test("the settings offer it before a job, say that it stays on the device, and tell what was learnt", async () => {
  const session = open(madeUpViews.start(), "settings")
  await settle()
  expect(find<HTMLAnchorElement>('a[href="#learn"]')?.textContent).toBe("Learn my voice")
  expect(words("section[aria-labelledby=voice-fit-head]").join()).toContain("stays on this device")
  act(() => session.settings.change({ voiceFit: { v: 1, ease: 0.4, prompts: 18 } }))
  expect(words("section[aria-labelledby=voice-fit-head]").join()).toContain("It will ask you less often")
  tap(/^Forget my voice$/)
  expect(session.settings.snapshot().voiceFit).toBeNull()
  open(madeUpViews.warningOpen(), "settings")
  await settle()
  expect(find('a[href="#learn"]')).toBeNull()
})
