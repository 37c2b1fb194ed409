/** What the worker set on this device: damaged or newer settings never break a start, and the voice follows them. */
import { expect, test } from "vitest"
import { preferencesOf, readSettings, usualSettings } from "../../src/app/settings/Settings"
import { SettingsKeeper, settingsPlace } from "../../src/app/settings/SettingsKeeper"
import { voiceSettingsOf } from "../../src/app/settings/voiceSettingsOf"
import { mostSteps, Preferences, usualPreferences } from "../../src/dialogue/Preferences"
import { VoiceSettings } from "../../src/speech/VoiceSettings"

const makePlace = (text: string | null) => {
  const kept = { text }
  return {
    kept,
    getItem: () => kept.text,
    setItem: (_: string, value: string) => {
      kept.text = value
    },
  }
}

test.each([null, "", "{", "null", "[]", "7", '"dark"', '{"theme":7}'])("settings of %j are the usual ones", (text) => {
  expect(readSettings(text)).toEqual(usualSettings)
})

test("a field that makes no sense costs no other, and one that only a newer version knows is passed over", () => {
  const text = JSON.stringify({ v: 9, theme: "contrast", textPercent: 133, rateStep: -2, contact: "ring Bob", glow: 1 })
  expect(readSettings(text)).toEqual({ ...usualSettings, theme: "contrast", rateStep: -2 })
})

test("a change holds at once and is there at the next start", () => {
  const place = makePlace(null)
  const keeper = new SettingsKeeper(place)
  const seen: string[] = []
  keeper.subscribe(() => seen.push(keeper.snapshot().theme))
  keeper.change({ theme: "dark" })
  expect(seen).toEqual(["dark"])
  expect(new SettingsKeeper(place).snapshot().theme).toBe("dark")
  expect(settingsPlace).toBe("bothhands.settings")
})

test("a device that keeps nothing still takes a change for the visit", () => {
  const refusing = {
    getItem: () => {
      throw new Error("forbidden")
    },
    setItem: () => {
      throw new Error("full")
    },
  }
  const keeper = new SettingsKeeper(refusing)
  keeper.change({ textPercent: 200 })
  expect(keeper.snapshot().textPercent).toBe(200)
})

test("what the loop prefers and what is set are the same fields with the same limits", () => {
  expect(preferencesOf(usualSettings)).toEqual(usualPreferences)
  for (const step of [-mostSteps, 0, mostSteps]) {
    const settings = readSettings(JSON.stringify({ volumeStep: step, rateStep: step }))
    expect(Preferences.parse(preferencesOf(settings))).toMatchObject({ volumeStep: step, rateStep: step })
    expect(VoiceSettings.parse(voiceSettingsOf(settings, false))).toEqual(voiceSettingsOf(settings, false))
  }
  expect(readSettings('{"volumeStep":4}').volumeStep).toBe(0)
})

test("each step is louder and faster than the one before, and a loud place or a loud word is as loud as it goes", () => {
  const steps = Array.from({ length: 2 * mostSteps + 1 }, (_, index) => index - mostSteps)
  const voices = steps.map((step) => voiceSettingsOf({ ...usualSettings, volumeStep: step, rateStep: step }, false))
  for (const [index, voice] of voices.entries()) {
    if (index === 0) continue
    expect(voice.volume).toBeGreaterThan(voices[index - 1]!.volume)
    expect(voice.rate).toBeGreaterThan(voices[index - 1]!.rate)
  }
  const quiet = { ...usualSettings, volumeStep: -mostSteps }
  expect(voiceSettingsOf(quiet, true).volume).toBe(1)
  expect(voiceSettingsOf({ ...quiet, soundFirst: true }, false).volume).toBe(1)
})
