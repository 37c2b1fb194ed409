/** Chooses the adapters of the real page: the one place that knows them all. */
import { v7 } from "uuid"
import type { ChosenSpeaker } from "../speech/createSpeaker"
import { createOfflineListener } from "../speech/offlineListener"
import { openRecording } from "../speech/recordingMicrophone"
import { openBackup } from "./backup/openBackup"
import { createSessionOf } from "./createSessionOf"
import { createStore, createTools } from "./createTools"
import { createJobLead } from "./device/JobLead"
import { createJobNews } from "./device/JobNews"
import { earPlace } from "./earPlace"
import { followedPack } from "./followedPack"
import { localNow } from "./localNow"
import type { Desk } from "./office/Desk"
import type { Parts } from "./Parts"
import type { Session } from "./Session"

const samplePlace = "./samples/bakery.wav"

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

/** What the office works with. */
export const createDesk = (): Desk => {
  const { tools } = createTools()
  const news = createJobNews()
  return { store: createStore(tools, news), tools, now: localNow, device: deviceName(), watch: news.watch }
}

/** What the start page has made already. */
export type EarlyMade = Pick<Parts, "settings" | "speakLoud" | "microphone" | "isEarHere"> & { speaker: ChosenSpeaker }

/** The session that the page runs on. */
export const createSession = ({ speaker, ...made }: EarlyMade): Session => {
  const { interpreter, tools } = createTools()
  const news = createJobNews()
  const store = createStore(tools, news)
  return createSessionOf({
    store,
    watch: news.watch,
    backup: (trouble) => openBackup(store, trouble),
    ...made,
    tools,
    speaker,
    lead: createJobLead(),
    sample: async (ended) =>
      createOfflineListener({ assets: earPlace, openMicrophone: openRecording(samplePlace, ended) }),
    earGrammar: (context) => interpreter().earGrammar(context),
    expectWords: () => void interpreter().interpret(""),
    now: localNow,
    device: deviceName(),
    pack: followedPack.id,
    voiceName: () => speaker.voiceName(),
    earName: "offline ear",
  })
}
