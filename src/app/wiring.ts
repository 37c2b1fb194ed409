/** Chooses the adapters of the real page: the one place that knows them all. */
import { v7 } from "uuid"
import type { Tools } from "../dialogue/Tools"
import { createInterpreter } from "../interpret/createInterpreter"
import { createIndexedDbStore } from "../record/indexedDbStore"
import { createChecker } from "../rules/createChecker"
import { findPack } from "../rules/packs"
import { createRowMaker } from "../search/makeRow"
import { chooseVoice } from "../speech/chooseVoice"
import { createOfflineListener } from "../speech/offlineListener"
import { openRecording } from "../speech/recordingMicrophone"
import { createSessionOf } from "./createSessionOf"
import { localNow } from "./localNow"
import type { Desk } from "./office/Desk"
import type { Session } from "./Session"

const grammarFiles = import.meta.glob<string>("../../grammars/**/*.{jsgf,tsv,txt}", {
  query: "?raw",
  import: "default",
  eager: true,
})

/** Keyed by the path inside `grammars/`, as the interpreter takes them. */
const grammars = Object.fromEntries(
  Object.entries(grammarFiles).map(([path, text]) => [path.replace("../../grammars/", ""), text]),
)

const pack = "uk-bs7671"
const assets = { ear: "./ear/", voice: "./voice/", sample: "./samples/bakery.wav" }

/** A name for this device in the log, kept where the browser lets us; otherwise one for this visit. */
const deviceName = (): string => {
  const fresh = v7()
  try {
    const known = localStorage.getItem("bothhands.device")
    if (!known) localStorage.setItem("bothhands.device", fresh)
    return known ?? fresh
  } catch {
    return fresh
  }
}

/** The interpreter, and what the loop and the office share. */
const createTools = () => {
  const interpreter = createInterpreter(grammars)
  const checker = createChecker(findPack(pack)!)
  const tools: Tools = {
    interpret: (heard, context) => interpreter.interpret(heard, context),
    check: (situation) => checker.check(situation),
    newId: () => v7(),
  }
  return { interpreter, tools }
}

/** Both sides write rows, so that the office's list is right whichever of them wrote last. */
const createStore = ({ check }: Tools) =>
  createIndexedDbStore("bothhands", createRowMaker(check, import.meta.env.VITE_RULES))

/** What the office works with. */
export const createDesk = (): Desk => {
  const { tools } = createTools()
  return { store: createStore(tools), tools, now: localNow, device: deviceName() }
}

/** The session that the page runs on. */
export const createSession = (): Session => {
  const { interpreter, tools } = createTools()
  const speaker = chooseVoice({ packFolder: assets.voice })
  return createSessionOf({
    store: createStore(tools),
    tools,
    speaker,
    microphone: createOfflineListener({ assets: assets.ear }),
    sample: async (ended) =>
      createOfflineListener({ assets: assets.ear, openMicrophone: openRecording(assets.sample, ended) }),
    earGrammar: (context) => interpreter.earGrammar(context),
    now: localNow,
    device: deviceName(),
    pack,
    voiceName: () => speaker.voiceName(),
    earName: "offline ear",
  })
}
