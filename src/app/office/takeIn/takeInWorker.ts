/**
 * The worker that takes files in: reading, checking hashes, hearing, the loop and the storing all happen here, so that the
 * page stays quick. It is ended to stop it; a file's lines are stored in one stroke, so nothing is ever half there.
 */
import "../../zodWithoutEval"
// The reader of captions looks for a document to tell a page from a server, so it has to come before the stand-in.
import "../../../speech/readTranscript"
import "../../../speech/standInDocument"
import { done, type Outcome } from "../../../facts/Outcome"
import { createIndexedDbClips } from "../../../record/indexedDbClips"
import { loadEngine } from "../../../speech/engine"
import { loadEarFiles } from "../../../speech/loadEarFiles"
import { createRecogniser, type Recogniser } from "../../../speech/recogniser"
import { createStore, createTools } from "../../createTools"
import { followedPack } from "../../followedPack"
import { localNow } from "../../localNow"
import { freeBytes } from "../../offline/storageCare"
import { refusedFile } from "./TakenFile"
import { type TakeInTools, takeInFile } from "./takeInFile"
import type { FromTaker, KeepOrder, ToTaker } from "./takeInMessages"

const { interpreter, tools } = createTools()
const tell = (message: FromTaker) => self.postMessage(message)
const store = createStore(tools, (clips) => tell({ tell: "dropped", clips }))
const clips = createIndexedDbClips()

let ear: Recogniser | null = null

const openEar = async (address: string): Promise<Outcome<Recogniser>> => {
  if (ear) return done(ear)
  const [engine, files] = await Promise.all([loadEngine(), loadEarFiles(address)])
  if (!files.ok) return files
  const opened = createRecogniser(engine, files.value)
  const taken = opened.take(interpreter().earGrammar({}))
  if (!taken.ok) return taken
  ear = opened
  return done(opened)
}

const toolsFor = (address: string, keep: KeepOrder): TakeInTools => ({
  store,
  tools,
  now: localNow,
  pack: followedPack.id,
  openEar: () => openEar(address),
  told: (part) => tell({ tell: "part", part }),
  clips: keep.sound ? { clips, opus: keep.opus, free: () => freeBytes(navigator.storage) } : null,
})

self.addEventListener("message", async ({ data }: MessageEvent<ToTaker>) => {
  const { name, file, ear: address, keep, sound } = data
  try {
    const bytes = new Uint8Array(await file.arrayBuffer())
    const content = { file: name, bytes, changedMs: file.lastModified }
    tell({ tell: "taken", taken: await takeInFile(toolsFor(address, keep), content, sound) })
  } catch {
    tell({ tell: "taken", taken: [refusedFile(name, "The file could not be read.")] })
  }
})
