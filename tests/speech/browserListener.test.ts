/**
 * The browser's own recogniser keeps the contract of an ear, and every fault that was reported from the field is played
 * to it as a trace. Ids are those of the reports; where a trace comes from stands beside it.
 */
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest"
import { done, refuse } from "../../src/facts/Outcome"
import { createBrowserListener } from "../../src/speech/browserListener"
import { earChoices } from "../../src/speech/earChoices"
import { availableMs, findOnDevice, installMs, type OnDeviceCalls } from "../../src/speech/onDevicePack"
import { capMs, type Recognition } from "../../src/speech/recognitionSession"
import { createScriptedListener } from "../../src/speech/scriptedListener"
import { describeListener } from "../contracts/listenerContract"
import { FakeBrowser, type TraceEvent } from "./fakeRecognition"
import { spoken } from "./spokenTraces"

beforeEach(() => void vi.useFakeTimers())
afterEach(() => void vi.useRealTimers())

const grammar = { id: "g", jsgf: "#JSGF V1.0;\ngrammar g;\npublic <g> = water bond | yes;\n", pronunciations: [] }
const whole = "water bond ten millimetre"

const open = async (traces: readonly (readonly TraceEvent[])[], more: { remembered?: string } = {}) => {
  const browser = new FakeBrowser(traces)
  const fallback = createScriptedListener()
  const remembered: string[] = []
  const ear = createBrowserListener({
    make: browser.make,
    fallback,
    remembered: () => more.remembered ?? null,
    remember: (because) => remembered.push(because),
    now: () => Date.now() / 1000,
  })
  const heard: string[] = []
  const margins: (number | null)[] = []
  const told: string[] = []
  await ear.prepare(grammar)
  await ear.start({
    heard: (one) => {
      heard.push(one.text)
      margins.push(one.margin)
    },
    stumbled: (because) => told.push(because),
    failed: (because) => told.push(because),
  })
  return {
    browser,
    fallback,
    ear,
    heard,
    margins,
    told,
    remembered,
    run: (ms: number) => vi.advanceTimersByTimeAsync(ms),
  }
}

const quiet: readonly TraceEvent[] = [{ t: 0, ev: "start" }]

describe("what was said is handed over once, and waits for a yes", () => {
  test.each(spoken)("%s, %s", async (_id, _source, says, trace) => {
    const { heard, margins, run } = await open([trace, quiet])
    await run(12_000)
    expect(heard).toEqual(says)
    expect(margins.every((margin) => margin !== null && margin < 1)).toBe(true)
  })

  test("S01: a reading said twice in two listenings is two readings, and words are not cut in the middle", async () => {
    const one: TraceEvent[] = [
      { t: 500, ev: "result", results: [[true, "nought point four ohms", 0.9]] },
      { t: 600, ev: "end" },
    ]
    const tenth: TraceEvent[] = [
      {
        t: 500,
        ev: "result",
        results: [
          [true, "ten", 0.9],
          [true, "tenth of a metre", 0.9],
        ],
      },
      { t: 600, ev: "end" },
    ]
    const { heard, run } = await open([one, one, tenth, quiet])
    await run(8000)
    expect(heard).toEqual(["nought point four ohms", "nought point four ohms", "ten tenth of a metre"])
  })
})

describeListener("the browser's recogniser", async () => {
  vi.useFakeTimers()
  const browser = new FakeBrowser([quiet])
  const prepares = (taken: { jsgf: string }) =>
    taken.jsgf.includes("xyzzyplugh") ? refuse("There is a word I do not know.") : done(undefined)
  const listener = createBrowserListener({
    make: browser.make,
    fallback: createScriptedListener({ prepares }),
    now: () => Date.now() / 1000,
  })
  return {
    listener,
    pause: async (seconds) => void (await vi.advanceTimersByTimeAsync(seconds * 1000)),
    // Who talks to this ear waits until it listens.
    say: async (text) => {
      for (let waited = 0; !browser.running && waited < 20; waited++) await vi.advanceTimersByTimeAsync(100)
      browser.running?.emit({ t: 0, ev: "result", results: [[true, text, 0.9]] })
      browser.running?.emit({ t: 0, ev: "end" })
      await vi.advanceTimersByTimeAsync(1000)
    },
  }
})

test("S04, csdcorp/speech_to_text#69: words that come after the stop are kept until it resolves, and never after", async () => {
  const { browser, ear, heard, run } = await open([[{ t: 9800, ev: "result", results: [[false, "water bond", 0]] }]])
  await run(9900)
  const stopped = ear.stop()
  await run(148)
  browser.made[0]!.emit({ t: 0, ev: "result", results: [[false, whole, -1]] })
  await run(2000)
  await stopped
  expect(heard).toEqual([whole])
  browser.made[0]!.emit({ t: 0, ev: "result", results: [[true, `${whole} more`, 0.9]] })
  expect(heard).toEqual([whole])
})

describe("S07, MikeyParton/react-speech-kit#23: it starts and then nothing ever happens", () => {
  test("A: a fresh recogniser takes the place of one that does not end; after two the other ear listens", async () => {
    const { browser, fallback, heard, told, run } = await open([quiet])
    browser.made[0]!.obeys = false
    await run(capMs + 2000)
    expect(browser.made.length).toBeGreaterThan(1)
    browser.made[1]!.obeys = false
    await run(capMs + 4000)
    expect(told).toEqual([expect.stringContaining("offline ear")])
    fallback.say(whole)
    expect(heard).toEqual([whole])
  })
  test("B: sound without words goes to the other ear at the cap, with a sentence", async () => {
    const mute: TraceEvent[] = [
      { t: 120, ev: "audiostart" },
      { t: 600, ev: "soundstart" },
    ]
    const { browser, told, run } = await open([mute])
    browser.made[0]!.obeys = false
    await run(capMs + 2000)
    expect(told).toEqual([expect.stringMatching(/^I could hear sound but got no words\./)])
  })
})

describe("S08, MicrosoftEdge/MSEdgeExplainers#980: 'network' although the phone is online", () => {
  const trace: TraceEvent[] = [
    { t: 15, ev: "audiostart" },
    { t: 460, ev: "error", error: "network" },
    { t: 470, ev: "end" },
  ]
  test("the other ear takes over at once and nobody is sent to look for a signal", async () => {
    const { browser, fallback, heard, told, remembered, run } = await open([trace])
    await run(5000)
    expect(browser.made).toHaveLength(1)
    expect(told).toHaveLength(1)
    expect(told[0]).not.toMatch(/network|signal|connection/)
    expect(remembered).toEqual(["This browser has no speech service."])
    fallback.say(whole)
    expect(heard).toEqual([whole])
  })
  test("what was remembered is not tried again", async () => {
    const { browser, fallback, heard } = await open([trace], { remembered: "This browser has no speech service." })
    expect(browser.made).toHaveLength(0)
    fallback.say(whole)
    expect(heard).toEqual([whole])
  })
})

test("S09, speech-translator-ext/speech-translator-readme#11: each language once, then the other ear", async () => {
  const trace: TraceEvent[] = [
    { t: 120, ev: "error", error: "language-not-supported" },
    { t: 125, ev: "end" },
  ]
  const { browser, told, run } = await open([trace])
  await run(20_000)
  expect(browser.made.map((one) => one.lang)).toEqual(["en-GB", "en-US"])
  expect(told).toHaveLength(1)
})

test("S09: a tag with an underscore is put right", async () => {
  const browser = new FakeBrowser([quiet])
  const ear = createBrowserListener({ make: browser.make, fallback: createScriptedListener(), langs: ["en_GB"] })
  await ear.prepare(grammar)
  await ear.start({ heard: () => {} })
  expect(browser.made[0]!.lang).toBe("en-GB")
  await ear.release()
})

describe("S10, brave/brave-browser#55414: a pack that never comes", () => {
  const never = new Promise<never>(() => {})
  test.each([
    ["A", { available: async () => "downloading", install: () => never }],
    ["B", { available: async () => "unavailable", install: async () => false }],
    ["C", {}],
    ["never answers", { available: () => never, install: () => never }],
    [
      "throws",
      {
        available: () => {
          throw new TypeError("no")
        },
      },
    ],
  ])("%s: the wait ends and the answer is no", async (_, calls) => {
    const found = findOnDevice(calls, ["en-GB", "en-US"])
    await vi.advanceTimersByTimeAsync(4 * availableMs + 2 * installMs + 1000)
    expect(await found).toBeNull()
  })
  test("only what is there counts, each language asked by itself", async () => {
    const asked: string[] = []
    const available = async ({ langs }: { langs: string[] }) => {
      asked.push(langs.join())
      return langs[0] === "en-US" ? "available" : "unavailable"
    }
    expect(await findOnDevice({ available }, ["en-GB", "en-US"])).toBe("en-US")
    expect(asked).toEqual(["en-GB", "en-US"])
  })
  test("meanwhile it listens", async () => {
    const browser = new FakeBrowser([
      [
        { t: 500, ev: "result", results: [[true, whole, 0.9]] },
        { t: 600, ev: "end" },
      ],
      quiet,
    ])
    const onDevice = { available: () => never, install: () => never }
    const ear = createBrowserListener({ make: browser.make, fallback: createScriptedListener(), onDevice })
    const heard: string[] = []
    await ear.prepare(grammar)
    await ear.start({ heard: (one) => heard.push(one.text) })
    await vi.advanceTimersByTimeAsync(1500)
    expect(heard).toEqual([whole])
    await ear.release()
  })
})

describe("S15, mbechauf/voice-claude#20: the recogniser hears the app's own voice", () => {
  test("A: the tail that arrives after the voice has ended is not taken", async () => {
    const { browser, ear, heard, run } = await open([quiet])
    ear.deafen()
    await run(2600)
    ear.undeafen(250)
    await run(1000)
    expect(browser.running).toBeUndefined()
    browser.made[0]!.emit({ t: 0, ev: "result", results: [[true, "ten millimetre correct", 0.8]] })
    await run(300)
    expect(heard).toEqual([])
  })
  test("B: what a session that overlaps the voice heard is dropped whole", async () => {
    const { browser, ear, heard, run } = await open([quiet])
    ear.deafen()
    browser.made[0]!.emit({ t: 0, ev: "result", results: [[true, whole, 0.8]] })
    await run(3000)
    ear.undeafen(250)
    await run(300)
    expect(heard).toEqual([])
  })
  test("C: a true answer after it is taken", async () => {
    const { browser, ear, heard, run } = await open([quiet])
    ear.deafen()
    await run(2600)
    ear.undeafen(250)
    await run(1700)
    browser.running!.emit({ t: 0, ev: "result", results: [[true, "correct", 0.9]] })
    browser.running!.emit({ t: 0, ev: "end" })
    await run(600)
    expect(heard).toEqual(["correct"])
  })
})

describe("S13, TalAter/annyang#399: the screen goes off and comes back", () => {
  const page = Object.assign(new EventTarget(), { visibilityState: "visible" })
  const turn = (state: string) => {
    page.visibilityState = state
    page.dispatchEvent(new Event("visibilitychange"))
  }
  beforeEach(() => void vi.stubGlobal("document", page))
  afterEach(() => void vi.unstubAllGlobals())

  test("A: hidden ends the session, what was open is asked for again, and a new recogniser listens on the way back", async () => {
    const { browser, ear, heard, told, run } = await open([quiet, [{ t: 50, ev: "audiostart" }]])
    browser.made[0]!.emit({ t: 0, ev: "result", results: [[false, "water bond", 0]] })
    turn("hidden")
    await run(20_000)
    expect([browser.made.length, heard, told.length]).toEqual([1, [], 1])
    turn("visible")
    await run(3000)
    expect(browser.made).toHaveLength(2)
    expect(told).toEqual([expect.stringContaining("while the page was away")])
    await ear.release()
  })
  test("B: a microphone that stays dead afterwards is told in words", async () => {
    const { ear, told, run } = await open([quiet])
    turn("hidden")
    turn("visible")
    await run(3000)
    expect(told).toEqual(["Nothing comes from the microphone. Open the page again."])
    await ear.release()
  })
})

test("'no-speech' again and again is listened through, ever more slowly, and nothing is said about it", async () => {
  const trace: TraceEvent[] = [
    { t: 100, ev: "error", error: "no-speech" },
    { t: 110, ev: "end" },
  ]
  const { browser, told, run } = await open([trace])
  await run(60_000)
  expect(told).toEqual([])
  expect(browser.made.length).toBeGreaterThan(10)
  expect(browser.made.length).toBeLessThan(25)
})

test("phrase hints that the browser refuses are left out from then on", async () => {
  const trace: TraceEvent[] = [
    { t: 100, ev: "error", error: "phrases-not-supported" },
    { t: 110, ev: "end" },
  ]
  const { told, run, browser } = await open([trace, quiet])
  await run(3000)
  expect(told).toEqual([])
  expect(browser.made.length).toBe(2)
})

test("a microphone that is not allowed is told in words, and the other ear is tried", async () => {
  const { told, run } = await open([[{ t: 50, ev: "error", error: "not-allowed" }]])
  await run(1000)
  expect(told).toEqual([expect.stringMatching(/^The browser did not let .*offline ear/)])
})

test("a browser without a recogniser uses the other ear from the start, without a word", async () => {
  const fallback = createScriptedListener()
  const ear = createBrowserListener({ make: null, fallback })
  const got: string[] = []
  await ear.prepare(grammar)
  expect(
    await ear.start({ heard: (one) => got.push(one.text), stumbled: (because) => got.push(because) }),
  ).toMatchObject({
    ok: true,
  })
  fallback.say("yes")
  expect(got).toEqual(["yes"])
  await ear.release()
})

test("the choice says where the sound goes, and is off where there is no recogniser", () => {
  const [offline, browser] = earChoices({})
  expect(offline).toMatchObject({ id: "offline", isThere: true, about: expect.stringContaining("No sound leaves") })
  expect(browser).toMatchObject({ id: "browser", isThere: false, about: expect.stringContaining("servers") })
  expect(earChoices({ webkitSpeechRecognition: class {} })[1]!.isThere).toBe(true)
})

test("on this device only is offered where the browser can be asked for it, and nowhere else", () => {
  const there = (globals: object) => earChoices(globals).find((one) => one.id === "device")!.isThere
  expect(there({})).toBe(false)
  expect(there({ webkitSpeechRecognition: class {} })).toBe(false)
  expect(there({ SpeechRecognition: Object.assign(class {}, { available: async () => "available" }) })).toBe(true)
})

describe("on this device only", () => {
  const openHere = async (onDevice: OnDeviceCalls, makes: (browser: FakeBrowser) => () => Recognition) => {
    const browser = new FakeBrowser([quiet])
    const fallback = createScriptedListener()
    const used: string[] = []
    const told: string[] = []
    const make = makes(browser)
    const ear = createBrowserListener({ make, fallback, onDevice, deviceOnly: true, using: (id) => used.push(id) })
    await ear.prepare(grammar)
    const started = ear.start({ heard: (one) => told.push(one.text), stumbled: (because) => told.push(because) })
    await vi.advanceTimersByTimeAsync(3 * availableMs)
    expect(await started).toMatchObject({ ok: true })
    return { ear, fallback, used, told, made: () => browser.made.length }
  }
  const plain = (browser: FakeBrowser) => browser.make
  const local = (browser: FakeBrowser) => () => Object.assign(browser.make(), { processLocally: false })

  test.each(["unavailable", "downloadable"])("no recogniser is made where the pack is %s", async (state) => {
    const { fallback, used, told, made, ear } = await openHere({ available: async () => state }, local)
    expect(made()).toBe(0)
    expect(used).toEqual(["offline"])
    fallback.say("yes")
    expect(told).toEqual([expect.stringContaining("I listen with the offline ear"), "yes"])
    await ear.release()
  })

  test("one that does not say that it stays on the device is left before it starts", async () => {
    const { used, told, ear } = await openHere({ available: async () => "available" }, plain)
    expect(used).toEqual(["device", "offline"])
    expect(told).toEqual([expect.stringContaining("cannot stay on this device")])
    await ear.release()
  })

  test("one that does is told to, before it starts", async () => {
    const recognisers: Recognition[] = []
    const { used, ear } = await openHere({ available: async () => "available" }, (browser) => () => {
      const made = local(browser)()
      recognisers.push(made)
      return made
    })
    expect(used).toEqual(["device"])
    expect(recognisers.map((one) => one.processLocally)).toEqual([true])
    await ear.release()
  })
})
