/** The built-in voice: how large it is, how fast a sentence is planned, rendered and ready, and what packing costs. */
import { existsSync, readFileSync } from "node:fs"
import { gzipSync } from "node:zlib"
import { readVoiceWords } from "../../src/cli/readVoiceWords"
import { levelOf } from "../../src/cli/trimSpeech"
import { speakClip } from "../../src/cli/voicePack"
import { planClips } from "../../src/speech/planClips"
import { renderClips } from "../../src/speech/renderClips"
import { openVoicePack, VoicePack } from "../../src/speech/VoicePack"

const folder = ".ear/voice/"
const sentences = [
  "Water. Sixteen square. Fourteen metres.",
  "Nought point nought five ohms. Is that it?",
  "Warning. Water: the bond is too small. Sixteen square is needed.",
  "Caution. If you smell gas, stop and get out. No switches, no sparks.",
]

const median = (values: number[]) => values.toSorted((a, b) => a - b)[values.length >> 1]!

export const run = async (): Promise<void> => {
  if (!existsSync(`${folder}voice.json`)) return console.log("No voice yet. Run: npm run ear")
  const note = readFileSync(`${folder}voice.json`)
  const pack = VoicePack.parse(JSON.parse(note.toString()))
  const packed = readFileSync(`${folder}${pack.file}`)
  const kB = (bytes: number) => `${Math.round(bytes / 1000)} kB`
  const places = Object.values(pack.clips)
  const seconds = [...new Map(places.map((place) => [place[0], place[1]])).values()].reduce((a, b) => a + b, 0)
  console.log(`clips ${places.length}, sound ${(seconds / pack.rateHz).toFixed(0)} s at ${pack.rateHz} Hz`)
  console.log(`packed ${kB(packed.length)}, gzipped ${kB(gzipSync(packed).length)}`)
  console.log(`index ${kB(note.length)}, gzipped ${kB(gzipSync(note).length)}`)

  const openMs = performance.now()
  const clips = openVoicePack(pack, new Uint8Array(packed))
  console.log(`opening the pack in memory ${(performance.now() - openMs).toFixed(2)} ms`)
  for (const sentence of sentences) {
    const times = Array.from({ length: 25 }, () => {
      const from = performance.now()
      renderClips(planClips(sentence, clips).pieces, clips)
      return performance.now() - from
    })
    const samples = renderClips(planClips(sentence, clips).pieces, clips)
    const [first, typical] = [times[0]!.toFixed(2), median(times).toFixed(2)]
    console.log(
      `say() to samples: first ${first} ms, median ${typical} ms, sound ${(samples.length / pack.rateHz).toFixed(2)} s: ${sentence}`,
    )
  }
  const words = readVoiceWords(readFileSync("grammars/en-GB/voiceWords.txt", "utf8")).slice(0, 60)
  const losses: number[] = []
  for (const word of words) {
    const original = await speakClip(word)
    const back = clips.read(word.name)
    if (back.length !== original.length) continue
    losses.push(20 * Math.log10(levelOf(original) / levelOf(original.map((sample, n) => sample - back[n]!))))
  }
  console.log(
    `signal over packing noise, ${losses.length} clips: median ${median(losses).toFixed(1)} dB, least ${Math.min(...losses).toFixed(1)} dB`,
  )
}
