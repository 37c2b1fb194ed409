/** What every speaker has to keep to, whatever it speaks with. Runs on the test's clock, so no wait takes real time. */
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest"
import type { Sound, Speaker } from "../../src/speech/Speaker"

export interface SpeakerBench {
  speaker: Speaker
  /** Sentences that began to be heard, in lower case without stops. */
  heard(): string[]
  /** Sounds that began to be heard. */
  sounds(): number
  /** From now on the output never says that it has ended. */
  loseEnds(): void
}

export interface SpeakerMakers {
  make(): SpeakerBench
  /** A device on which nothing can speak. */
  makeMute(): SpeakerBench
}

/** Lets the test's clock run until the promise settles, and gives what it settled to. */
export const settle = async <T>(promise: Promise<T>, mostMs = 60_000): Promise<T> => {
  let outcome: { value: T } | null = null
  void promise.then((value) => {
    outcome = { value }
  })
  for (let ms = 0; ms <= mostMs && outcome === null; ms += 10) await vi.advanceTimersByTimeAsync(10)
  if (outcome === null) throw new Error(`Nothing happened for ${mostMs} ms`)
  return (outcome as { value: T }).value
}

export const speakerContract = (name: string, { make, makeMute }: SpeakerMakers): void => {
  describe(`speaker contract: ${name}`, () => {
    beforeEach(() => {
      vi.useFakeTimers()
    })
    afterEach(() => {
      vi.useRealTimers()
    })
    const awake = async (bench: SpeakerBench) => {
      expect(await settle(bench.speaker.prepare())).toEqual({ ok: true, value: undefined })
      return bench
    }

    test("says nothing before a tap, and says so", async () => {
      const { speaker, heard } = make()
      expect(await settle(speaker.say("water"))).toEqual({ ok: false, because: expect.stringMatching(/tap/) })
      expect(heard()).toEqual([])
    })

    test("says sentences whole, one after the other, in the order given", async () => {
      const { speaker, heard } = await awake(make())
      const ends: string[] = []
      const all = ["water", "ten square", "gas"].map((words) => speaker.say(words).then(() => ends.push(words)))
      await vi.advanceTimersByTimeAsync(100)
      expect(heard()).toEqual(["water"])
      expect(ends).toEqual([])
      await settle(Promise.all(all))
      expect(heard()).toEqual(["water", "ten square", "gas"])
      expect(ends).toEqual(["water", "ten square", "gas"])
    })

    test("goes on when an end never comes", async () => {
      const bench = await awake(make())
      bench.loseEnds()
      const said = [bench.speaker.say("water"), bench.speaker.say("gas")]
      for (const one of said) expect((await settle(one, 20_000)).ok).toBe(true)
      expect(bench.heard()).toEqual(["water", "gas"])
    })

    test("hushing stops what is said, drops what waits, and what comes after is said", async () => {
      const { speaker, heard } = await awake(make())
      const cut = [speaker.say("water"), speaker.say("gas"), speaker.say("ten square")]
      await vi.advanceTimersByTimeAsync(100)
      speaker.hush()
      const after = speaker.say("square")
      for (const one of cut) expect((await settle(one, 500)).ok).toBe(false)
      expect((await settle(after)).ok).toBe(true)
      expect(heard()).toEqual(["water", "square"])
    })

    test("sounds wait their turn, and each ends within a second", async () => {
      const { speaker, heard, sounds } = await awake(make())
      const names: Sound[] = ["listening", "gotIt", "sayAgain", "warning"]
      for (const sound of names) await settle(speaker.sound(sound), 1000)
      expect(sounds()).toBe(4)
      const first = speaker.say("water")
      const then = speaker.sound("warning")
      await vi.advanceTimersByTimeAsync(100)
      expect(sounds()).toBe(4)
      await settle(Promise.all([first, then]))
      expect(sounds()).toBe(5)
      expect(heard()).toEqual(["water"])
    })

    test("words without sound are done at once", async () => {
      const { speaker, heard } = await awake(make())
      for (const words of ["", "  \n"]) expect(await settle(speaker.say(words), 20)).toMatchObject({ ok: true })
      expect(heard()).toEqual([])
    })

    test("refuses in plain words where nothing can speak, and never throws", async () => {
      const { speaker, heard } = makeMute()
      const outcome = await settle(speaker.prepare())
      expect(outcome).toEqual({ ok: false, because: expect.stringMatching(/^[A-Z].*\.$/) })
      expect((await settle(speaker.say("water"))).ok).toBe(false)
      await settle(speaker.sound("warning"))
      expect(heard()).toEqual([])
    })

    test("says nothing once it is released", async () => {
      const { speaker, heard } = await awake(make())
      const cut = speaker.say("water")
      await vi.advanceTimersByTimeAsync(100)
      await settle(speaker.release())
      expect((await settle(cut)).ok).toBe(false)
      expect((await settle(speaker.say("gas"))).ok).toBe(false)
      expect((await settle(speaker.prepare())).ok).toBe(false)
      expect(heard()).toEqual(["water"])
    })
  })
}
