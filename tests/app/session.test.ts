/** A session out of scripted parts: what is on disk before it is said, what a full disk does, and coming back. */
import { afterEach, expect, test, vi } from "vitest"
import { createSessionOf } from "../../src/app/createSessionOf"
import type { Parts } from "../../src/app/Parts"
import type { Session } from "../../src/app/Session"
import { SettingsKeeper } from "../../src/app/settings/SettingsKeeper"
import { done, refuse } from "../../src/facts/Outcome"
import { createMemoryStore } from "../../src/record/memoryStore"
import type { Store } from "../../src/record/Store"
import type { Speaker } from "../../src/speech/Speaker"
import { createScriptedListener } from "../../src/speech/scriptedListener"
import { realInterpreter, realTools } from "../realTools"

interface Spoken {
  words: string
  /** How many lines were on disk when it was said. */
  lines: number
}

const makeParts = (store: Store = createMemoryStore()) => {
  let count = 0
  const spoken: Spoken[] = []
  const sounds: string[] = []
  const stored = { lines: 0 }
  const counting: Store = {
    ...store,
    append: async (lines) => {
      const outcome = await store.append(lines)
      if (outcome.ok) stored.lines += lines.length
      return outcome
    },
  }
  const speaker: Speaker = {
    prepare: async () => done(undefined),
    say: async (words) => {
      spoken.push({ words, lines: stored.lines })
      return done(undefined)
    },
    sound: async (sound) => void sounds.push(sound),
    hush: () => {},
    release: async () => {},
  }
  const microphone = createScriptedListener()
  const parts: Parts = {
    store: counting,
    tools: { ...realTools(), newId: () => `id-${++count}` },
    speaker,
    settings: new SettingsKeeper(null),
    sound: { sum: async () => ({ clips: 0, bytes: 0 }), clear: async () => done(undefined) },
    keeper: null,
    speakLoud: () => {},
    show: () => {},
    lead: { join: async () => "leads", ask: () => {}, grew: () => {}, leave: () => {} },
    microphone,
    createLearner: () => {
      throw new Error("No job learns a voice.")
    },
    sample: null,
    earGrammar: (context) => realInterpreter().earGrammar(context),
    now: () => new Date(Date.UTC(2026, 2, 2, 9, 0, count)).toISOString(),
    device: "test",
    pack: "uk-bs7671",
    voiceName: () => "scripted",
    earName: () => "scripted",
  }
  return { parts, spoken, sounds, microphone, stored }
}

const until = (isTrue: () => boolean) => vi.waitFor(() => expect(isTrue()).toBe(true), { timeout: 2000, interval: 5 })

const startJob = async (session: Session, microphone: ReturnType<typeof createScriptedListener>) => {
  await until(() => session.snapshot().phase === "start")
  session.newJob("The bakery")
  await until(() => session.snapshot().ear.state === "listening" && session.snapshot().voice.saying === null)
  expect(microphone.grammarId).not.toBeNull()
}

afterEach(() => {
  vi.useRealTimers()
})

test("what is heard is stored before it is read back", async () => {
  const { parts, spoken, microphone, stored } = makeParts()
  const session = createSessionOf(parts)
  await startJob(session, microphone)
  const before = stored.lines
  microphone.say("water ten square", 20)
  await until(() => spoken.some((one) => one.words.startsWith("Water.")))
  const readBack = spoken.find((one) => one.words.startsWith("Water."))!
  expect(readBack.words).toContain("Ten square")
  expect(readBack.lines).toBeGreaterThanOrEqual(before + 3)
  expect(session.snapshot().dialogue.record.entries.map((held) => held.fact.value)).toEqual(["water", 10])
})

test("when the store is full nothing is claimed: the record stays as it was and the worker is told", async () => {
  const store = createMemoryStore()
  const { parts, spoken, sounds, microphone } = makeParts(store)
  const session = createSessionOf(parts)
  await startJob(session, microphone)
  const real = store.append
  parts.store.append = async () => refuse("The storage of this device is full.")
  microphone.say("water ten square", 20)
  await until(() => spoken.some((one) => one.words.startsWith("Not saved.")))
  expect(session.snapshot().dialogue.record.entries).toEqual([])
  expect(session.snapshot().notices.map((one) => one.words)).toContain("The storage of this device is full.")
  expect(spoken.filter((one) => one.words.includes("Ten square"))).toEqual([])
  expect(sounds).toContain("sayAgain")
  parts.store.append = real
  microphone.say("water ten square", 40)
  await until(() => session.snapshot().dialogue.record.entries.length === 2)
})

test("a session opened on the same store comes back to the job with all that was accepted", async () => {
  const store = createMemoryStore()
  const first = makeParts(store)
  const session = createSessionOf(first.parts)
  await startJob(session, first.microphone)
  first.microphone.say("water ten square", 20)
  await until(() => session.snapshot().dialogue.record.entries.length === 2)
  const again = createSessionOf(makeParts(store).parts)
  await until(() => again.snapshot().phase === "job")
  await until(() => again.snapshot().dialogue.record.entries.length === 2)
  expect(again.snapshot().dialogue.record.place).toBe("The bakery")
  expect(again.snapshot().spoken.length).toBeGreaterThan(0)
})

test("a refused microphone is one plain notice, and typing still works", async () => {
  const { parts } = makeParts()
  parts.microphone = createScriptedListener({ starts: refuse("The microphone is not allowed.") })
  const session = createSessionOf(parts)
  await until(() => session.snapshot().phase === "start")
  session.newJob("The bakery")
  await until(() => session.snapshot().notices.length > 0)
  expect(session.snapshot().notices[0]).toMatchObject({ kind: "trouble", words: "The microphone is not allowed." })
  session.type("gas ten square")
  await until(() => session.snapshot().dialogue.record.entries.length === 2)
})

/** A voice that goes on with its sentence until it is silenced. */
const speakUntilHushed = (parts: Parts) => {
  let end = () => {}
  const hushed = { times: 0 }
  const { say } = parts.speaker
  parts.speaker.say = async (words) => {
    await say(words)
    await new Promise<void>((fulfil) => {
      end = fulfil
    })
    return done(undefined)
  }
  parts.speaker.hush = () => {
    hushed.times += 1
    end()
  }
  return { hushed, finish: () => end() }
}

test.each([
  [true, "the voice stops and the words are taken, waiting for a yes"],
  [false, "as it comes, the ear is deaf and nothing is taken"],
])("said over the app's voice, with a headset: %s, %s", async (headset) => {
  const { parts, spoken, microphone } = makeParts()
  const session = createSessionOf(parts)
  await startJob(session, microphone)
  session.settings.change({ headset })
  const { hushed, finish } = speakUntilHushed(parts)
  microphone.say("water ten square", 20)
  await until(() => spoken.some((one) => one.words.startsWith("Water.")))
  const before = hushed.times
  microphone.say("water ten square", 30)
  microphone.say("gas sixteen square", 40)
  const sizes = () => session.snapshot().dialogue.record.entries.filter((held) => held.fact.kind === "conductor_csa")
  if (!headset) {
    finish()
    expect(sizes().map((held) => held.fact.value)).toEqual([10])
    expect(hushed.times).toBe(before)
    return
  }
  expect(hushed.times).toBeGreaterThan(before)
  await until(() => sizes().length === 2)
  expect(sizes().at(-1)).toMatchObject({ needsYes: true, accepted: null, fact: { value: 16, subject: "gas" } })
})

test("a job file that is none becomes a notice and changes nothing", async () => {
  const { parts, microphone, stored } = makeParts()
  const session = createSessionOf(parts)
  await startJob(session, microphone)
  const before = stored.lines
  session.openJobFile(new File(["a,b,c"], "list.csv"))
  await until(() => session.snapshot().notices.length > 0)
  expect(session.snapshot().notices[0]!.words).toBe("list.csv: This is not a Bothhands job file.")
  expect(stored.lines).toBe(before)
})

test("an ear that is on the device gets ready before the tap, and opens no microphone", async () => {
  const { parts, microphone } = makeParts()
  let starts = 0
  const start: typeof microphone.start = (events) => {
    starts += 1
    return microphone.start(events)
  }
  const session = createSessionOf({ ...parts, isEarHere: true, microphone: { ...microphone, start } })
  await until(() => microphone.grammarId !== null)
  expect(session.snapshot()).toMatchObject({ phase: "start", ear: { state: "stopped" } })
  expect(starts).toBe(0)
})

test("an ear that is not on the device yet is left alone until it is asked for", async () => {
  const { parts, microphone } = makeParts()
  const session = createSessionOf(parts)
  await until(() => session.snapshot().phase === "start")
  await new Promise((fulfil) => setTimeout(fulfil, 20))
  expect(microphone.grammarId).toBeNull()
})

test("what the office wrote to the job in hand is taken in without a word, and the next sentence is stored behind it", async () => {
  const { parts, microphone, spoken } = makeParts()
  let tell: (jobs: readonly string[]) => void = () => {}
  const session = createSessionOf({
    ...parts,
    watch: (changed) => {
      tell = changed
      return () => {}
    },
  })
  await startJob(session, microphone)
  session.type("water ten square")
  await until(() => session.snapshot().dialogue.record.entries.length > 1)
  const { job, record } = session.snapshot().dialogue
  const note = { kind: "note", value: "seen at the office" } as const
  const stamp = {
    v: 1,
    id: "desk-1",
    job: job!,
    at: record.lastAt!,
    by: "office",
    device: "desk",
    seq: record.nextSeq,
  } as const
  const origin = { by: "hand", reason: "added at the desk" } as const
  await parts.store.append([{ ...stamp, type: "entry", fact: note, origin, needsYes: false }])
  const said = spoken.length
  tell([job!])
  await until(() => session.snapshot().dialogue.record.entries.some((held) => held.entry === "desk-1"))
  expect(spoken).toHaveLength(said)
  session.type("fourteen metres")
  await until(() => session.snapshot().dialogue.record.entries.some((held) => held.fact.kind === "length"))
  const { lines } = await parts.store.read(job!)
  expect(lines.map((line) => line.seq)).toEqual(lines.map((_, at) => at))
})
