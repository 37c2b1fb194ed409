/**
 * `hear FILE.wav…`: the offline ear over recordings. One line of JSON for each utterance, in order, or WebVTT. All files
 * share one recogniser, since each new one costs a third of a second and memory that never comes back.
 */
import { readFileSync } from "node:fs"
import { escapeText, writeClock } from "../exports/writeCues"
import type { EarGrammar } from "../facts/EarGrammar"
import type { Heard } from "../facts/Heard"
import type { Context, Interpretation } from "../facts/Interpretation"
import { type Outcome, refuse } from "../facts/Outcome"
import type { UtteranceEar } from "../speech/earStream"
import { hearWav } from "../speech/hearSound"
import type { Recogniser } from "../speech/recogniser"

export interface HearOrder {
  files: readonly string[]
  context: Context
  to: "jsonl" | "vtt"
}

export interface HearTools {
  openEar(): Promise<Outcome<Recogniser>>
  earGrammar(context: Context): EarGrammar
  interpret(heard: Heard, context: Context): Interpretation
  print(line: string): void
  complain(line: string): void
}

/** Exit status: 0, or 2 where a file could not be heard; the others are heard all the same. */
export const hearFiles = async (order: HearOrder, tools: HearTools): Promise<0 | 2> => {
  const opened = await tools.openEar()
  const taken = opened.ok ? opened.value.take(tools.earGrammar(order.context)) : opened
  if (!opened.ok || !taken.ok) {
    tools.complain(taken.ok ? "" : taken.because)
    return 2
  }
  const heardFiles: { file: string; heards: Heard[] }[] = []
  let status: 0 | 2 = 0
  for (const file of order.files) {
    const heards = hearFile(file, opened.value)
    if (!heards.ok) {
      tools.complain(`${file}: ${heards.because}`)
      status = 2
      continue
    }
    heardFiles.push({ file, heards: heards.value })
    if (order.to === "jsonl")
      for (const heard of heards.value) tools.print(JSON.stringify(toLine(file, heard, order.context, tools)))
  }
  if (order.to === "vtt") tools.print(toVtt(heardFiles))
  return status
}

const hearFile = (file: string, ear: UtteranceEar): Outcome<Heard[]> => {
  try {
    return hearWav(new Uint8Array(readFileSync(file)), ear)
  } catch (error) {
    const missing = (error as NodeJS.ErrnoException).code === "ENOENT"
    return refuse(missing ? "there is no such file" : "the file cannot be read")
  }
}

const toLine = (file: string, heard: Heard, context: Context, tools: HearTools) => {
  const { facts, ask } = tools.interpret(heard, context)
  const { start, end, text, words, margin } = heard
  return { file, start, end, text, words, margin, facts, ask }
}

/** Several recordings follow one another as notes and cues; each starts at nought again. */
const toVtt = (all: readonly { file: string; heards: readonly Heard[] }[]): string => {
  const blocks = all.flatMap(({ file, heards }) => [
    ...(all.length > 1 ? [`NOTE ${file.replaceAll("-->", "→")}`] : []),
    ...heards.map(
      (heard) =>
        `${writeClock(heard.start)} --> ${writeClock(Math.max(heard.end, heard.start + 0.01))}\n${escapeText(heard.text)}`,
    ),
  ])
  return `${["WEBVTT", ...blocks].join("\n\n")}\n`
}
