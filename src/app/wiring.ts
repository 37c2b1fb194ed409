/** Chooses the adapters of the real page: the one place that knows them all. */
import { v7 } from "uuid"
import { createInterpreter } from "../interpret/createInterpreter"
import { createIndexedDbStore } from "../record/indexedDbStore"
import { createChecker } from "../rules/createChecker"
import { findPack } from "../rules/packs"
import { chooseVoice } from "../speech/chooseVoice"
import { createOfflineListener } from "../speech/offlineListener"
import { openRecording } from "../speech/recordingMicrophone"
import { createSessionOf } from "./createSessionOf"
import { localNow } from "./localNow"
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

/** Kept for the page's own use; a browser that refuses storage gets one for this visit. */
const remembered = (key: string) => ({
  get: (): string | null => {
    try {
      return localStorage.getItem(key)
    } catch {
      return null
    }
  },
  set: (value: string | null): void => {
    try {
      if (value === null) localStorage.removeItem(key)
      else localStorage.setItem(key, value)
    } catch {
      // Nothing is lost: the job itself is in the store, and is listed on the start page.
    }
  },
})

const deviceName = (): string => {
  const device = remembered("bothhands.device")
  const known = device.get()
  if (known) return known
  const fresh = v7()
  device.set(fresh)
  return fresh
}

/** The session that the page runs on. */
export const createSession = (): Session => {
  const interpreter = createInterpreter(grammars)
  const checker = createChecker(findPack(pack)!)
  const speaker = chooseVoice({ packFolder: assets.voice })
  return createSessionOf({
    store: createIndexedDbStore(),
    tools: {
      interpret: (heard, context) => interpreter.interpret(heard, context),
      check: (situation) => checker.check(situation),
      newId: () => v7(),
    },
    speaker,
    microphone: createOfflineListener({ assets: assets.ear }),
    sample: async (ended) =>
      createOfflineListener({ assets: assets.ear, openMicrophone: openRecording(assets.sample, ended) }),
    earGrammar: (context) => interpreter.earGrammar(context),
    now: localNow,
    device: deviceName(),
    pack,
    lastJob: remembered("bothhands.job"),
    voiceName: () => speaker.voiceName(),
    earName: "offline ear",
  })
}
