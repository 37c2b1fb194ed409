/**
 * An hour of sound into a job, as the office takes it in: the sample recording again and again, through the reading of the
 * WAV file, the offline ear, the loop and a store. Prints the time of one core, and how often progress is told. MINUTES
 * sets another length. Needs the ear pack.
 */
import { readFileSync } from "node:fs"
import { takeInFile } from "../../src/app/office/takeIn/takeInFile"
import { openEar } from "../../src/cli/openEar"
import { createMemoryStore } from "../../src/record/memoryStore"
import { encodeWav } from "../../src/speech/encodeWav"
import { readWav } from "../../src/speech/readWav"
import { realInterpreter, realTools } from "../realTools"

const minutes = Number(process.env.MINUTES ?? 60)

const longWav = (): Uint8Array => {
  const sample = readWav(readFileSync("samples/bakery.wav"))
  if (!sample.ok) throw new Error(sample.because)
  const { samples, rateHz } = sample.value
  const whole = new Float32Array(minutes * 60 * rateHz)
  for (let at = 0; at < whole.length; at += samples.length) {
    whole.set(samples.subarray(0, Math.min(samples.length, whole.length - at)), at)
  }
  return encodeWav(whole, rateHz)
}

const cpuSeconds = () => {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1e6
}

export const run = async (): Promise<void> => {
  const ear = await openEar()
  const taken = ear.ok ? ear.value.take(realInterpreter().earGrammar({})) : ear
  if (!ear.ok || !taken.ok) throw new Error(taken.ok ? "" : taken.because)
  const bytes = longWav()
  const started = cpuSeconds()
  let [tellings, longest, last] = [0, 0, started]
  const told = (part: number) => {
    const now = cpuSeconds()
    tellings += 1
    longest = Math.max(longest, now - last)
    last = now
    if (tellings % 600 === 0) console.log(`  ${Math.round(part * 100)} % after ${Math.round(now - started)} s`)
  }
  const desk = {
    store: createMemoryStore(),
    tools: realTools(),
    now: () => "2026-03-04T09:00:00+00:00",
    pack: "uk-bs7671",
    clips: null,
    openEar: async () => ear,
    told,
  }
  const [file] = await takeInFile(desk, { file: "hour.wav", bytes, changedMs: Date.UTC(2026, 2, 2, 12) })
  console.log(`${minutes} minutes of sound: ${Math.round(cpuSeconds() - started)} s of one core. ${file?.words}`)
  console.log(`progress told ${tellings} times, at most ${longest.toFixed(1)} s of work apart`)
}
