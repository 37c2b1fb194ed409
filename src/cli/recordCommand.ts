/** `record`: speaks a script into a recording, and writes its transcript beside it. */
import { readFileSync } from "node:fs"
import { writeFile } from "node:fs/promises"
import { fileURLToPath } from "node:url"
import type { Console, ExitStatus } from "./Console"
import { makeRecording, readScript } from "./makeRecording"
import { readText } from "./readInput"
import { readVoiceWords } from "./readVoiceWords"

const wordList = fileURLToPath(new URL("../../grammars/en-GB/voiceWords.txt", import.meta.url))

export const recordCommand = async (file: string, wav: string, io: Console): Promise<ExitStatus> => {
  const refused = (because: string): ExitStatus => {
    io.complain(because)
    return 2
  }
  if (!wav.endsWith(".wav")) return refused(`${wav}: a recording's name ends with .wav.`)
  const text = await readText(file)
  if (!text.ok) return refused(text.because)
  const script = readScript(text.value)
  if (!script.ok) return refused(`${file}: ${script.because}`)
  const recording = await makeRecording(script.value, readVoiceWords(readFileSync(wordList, "utf8")))
  const vtt = wav.replace(/\.wav$/, ".vtt")
  await writeFile(wav, recording.wav)
  await writeFile(vtt, recording.vtt)
  const seconds = Math.round(recording.samples.length / recording.rateHz)
  io.print(
    `${wav}: ${seconds} s, ${Math.round(recording.wav.length / 1000)} kB. ${vtt}: ${recording.cues.length} cues.`,
  )
  return 0
}
