/** Chooses the adapters of the real page: the one place that knows them all. */
import { v7 } from "uuid"
import type { Tools } from "../dialogue/Tools"
import type { ClipStore } from "../record/Clip"
import { createIndexedDbClips } from "../record/indexedDbClips"
import type { Store } from "../record/Store"
import { createBrowserEar } from "../speech/browserEar"
import type { ChosenSpeaker } from "../speech/createSpeaker"
import { encodeClip, playsOpus } from "../speech/encodeClip"
import { createOfflineListener, type OfflineListener } from "../speech/offlineListener"
import { openRecording } from "../speech/recordingMicrophone"
import { openBackup } from "./backup/openBackup"
import { ChosenEar } from "./ChosenEar"
import { createSessionOf } from "./createSessionOf"
import { createStore, createTools } from "./createTools"
import { createJobLead } from "./device/JobLead"
import { createJobNews, type JobNews } from "./device/JobNews"
import { earPlace } from "./earPlace"
import { failedEar } from "./failedEar"
import { followedPack } from "./followedPack"
import { grammarOfPrompt } from "./learn/grammarOfPrompt"
import { Learner } from "./learn/Learner"
import { localNow } from "./localNow"
import type { Desk } from "./office/Desk"
import { createDeskSound } from "./office/deskSound"
import { freeBytes } from "./offline/storageCare"
import type { Parts } from "./Parts"
import type { Session } from "./Session"
import type { Settings } from "./settings/Settings"
import type { SettingsKeeper } from "./settings/SettingsKeeper"
import { DroppedSound } from "./sound/DroppedSound"
import { SoundKeeper } from "./sound/SoundKeeper"
import { createSoundShelf } from "./sound/SoundShelf"
import { tidySound } from "./sound/tidySound"

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

interface StoreParts {
  clips: ClipStore
  dropped: DroppedSound
  news: JobNews
}

/** The store of either side, with sound that is past its time deleted. */
const openStore = (tools: Tools, { clips, dropped, news }: StoreParts, { keepSoundFor }: Settings): Store => {
  const store = createStore(tools, (count) => dropped.add(count), news)
  // What cannot be deleted now is deleted at the next start.
  tidySound(clips, store, keepSoundFor, Date.now()).catch(() => undefined)
  return store
}

/** What the office works with. */
export const createDesk = (settings: SettingsKeeper): Desk => {
  const { tools } = createTools()
  const news = createJobNews()
  const [clips, dropped] = [createIndexedDbClips(), new DroppedSound()]
  return {
    store: openStore(tools, { clips, dropped, news }, settings.snapshot()),
    watch: news.watch,
    tools,
    now: localNow,
    device: deviceName(),
    sound: { ...createDeskSound(clips), dropped, isOn: () => settings.snapshot().keepSound },
  }
}

/** What the start page has made already. */
export type EarlyMade = Pick<Parts, "settings" | "speakLoud" | "isEarHere"> & {
  speaker: ChosenSpeaker
  microphone: OfflineListener
}

/** The session that the page runs on. */
export const createSession = ({ speaker, ...made }: EarlyMade): Session => {
  const { interpreter, tools } = createTools()
  const news = createJobNews()
  const [clips, dropped] = [createIndexedDbClips(), new DroppedSound()]
  const keeper = new SoundKeeper({
    clips,
    dropped,
    isOn: () => made.settings.snapshot().keepSound,
    encode: async (samples, rateHz) => encodeClip(samples, rateHz, playsOpus()),
    free: () => freeBytes(navigator.storage),
    now: localNow,
  })
  const store = openStore(tools, { clips, dropped, news }, made.settings.snapshot())
  const ear = new ChosenEar({
    offline: made.microphone,
    chosen: () => made.settings.snapshot().ear,
    makeBrowserEar: (options) => createBrowserEar({ ...options, remembered: failedEar.read, remember: failedEar.keep }),
  })
  const fitEar = () => made.microphone.fitTo(made.settings.snapshot().voiceFit)
  fitEar()
  made.settings.subscribe(fitEar)
  return createSessionOf({
    store,
    watch: news.watch,
    backup: (trouble) => openBackup(store, trouble),
    sound: createSoundShelf(clips),
    keeper,
    ...made,
    microphone: ear,
    tools,
    speaker,
    lead: createJobLead(),
    sample: async (ended) =>
      createOfflineListener({ assets: earPlace, openMicrophone: openRecording(samplePlace, ended) }),
    createLearner: () =>
      new Learner({
        ear: made.microphone,
        grammarOf: (sentence) => grammarOfPrompt(sentence, interpreter().earGrammar({})),
        settings: made.settings,
        later: (act, ms) => void setTimeout(act, ms),
      }),
    earGrammar: (context) => interpreter().earGrammar(context),
    expectWords: () => void interpreter().interpret(""),
    show: (screen) => {
      location.hash = screen
    },
    now: localNow,
    device: deviceName(),
    pack: followedPack.id,
    voiceName: () => speaker.voiceName(),
    earName: ear.name,
  })
}
