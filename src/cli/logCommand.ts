/** `log`: reads the file, by its kind, and prints what the loop made of it. A file that is damaged in part gives 1. */
import { writeFile } from "node:fs/promises"
import { extname } from "node:path"
import type { Heard } from "../facts/Heard"
import { done, type Outcome, refuse } from "../facts/Outcome"
import { writeJobFile } from "../record/jobFile"
import { hearWav } from "../speech/hearSound"
import { type OnFault, readTranscript, type TranscriptKind, transcriptKinds } from "../speech/readTranscript"
import type { Console, ExitStatus } from "./Console"
import { logHeard, printRun } from "./logFile"
import { type LoopTools, loadLoopTools } from "./loopTools"
import { openEar } from "./openEar"
import { ofFile, readBytes, readText } from "./readInput"

export interface LogCommandOptions {
  out?: string
  place: string
  start?: string
  json?: boolean
  pack: string
  live?: boolean
}

const hearRecording = async (file: string, tools: LoopTools): Promise<Outcome<Heard[]>> => {
  const bytes = await readBytes(file)
  if (!bytes.ok) return bytes
  const ear = await openEar()
  if (!ear.ok) return ear
  const taken = ear.value.take(tools.interpreter.earGrammar({}))
  return taken.ok ? hearWav(bytes.value, ear.value) : taken
}

const readHeards = async (file: string, tools: LoopTools, onFault: OnFault): Promise<Outcome<Heard[]>> => {
  const kind = extname(file).slice(1).toLowerCase()
  if (kind === "wav") return hearRecording(file, tools)
  if (!(transcriptKinds as readonly string[]).includes(kind))
    return refuse(`I read ${transcriptKinds.join(", ")} and wav, not "${kind}".`)
  const text = await readText(file)
  return text.ok ? readTranscript(text.value, kind as TranscriptKind, onFault) : text
}

const parseStart = (start: string | undefined): Outcome<number> => {
  const ms = start === undefined ? Date.now() : Date.parse(start)
  return Number.isNaN(ms) ? refuse(`"${start}" is not a time such as 2026-03-02T09:00:00Z.`) : done(ms)
}

export const logCommand = async (file: string, options: LogCommandOptions, io: Console): Promise<ExitStatus> => {
  const tools = loadLoopTools(options.pack)
  const startMs = parseStart(options.start)
  let damaged = false
  const onFault = (fault: string) => {
    damaged = true
    io.complain(`${file}: ${fault}`)
  }
  const heards = tools.ok && startMs.ok ? await readHeards(file, tools.value, onFault) : startMs
  if (!tools.ok || !startMs.ok || !heards.ok) {
    const refusal = [tools, startMs, heards].find((one) => !one.ok) as { because: string }
    io.complain(ofFile(file, refusal.because))
    return 2
  }
  const { place, pack, live = false } = options
  const run = logHeard(heards.value as Heard[], { place, pack, live, startMs: startMs.value }, tools.value)
  const { lines, status } = printRun(run, options.json ?? false)
  for (const line of lines) io.print(line)
  if (options.out) await writeFile(options.out, writeJobFile(run.lines))
  return damaged ? 1 : status
}
