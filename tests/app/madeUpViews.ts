/** The states of the screen worth looking at, in an invented job: a bakery with a flat above. */
import type { SessionView } from "../../src/app/Session"
import type { DialogueState } from "../../src/dialogue/DialogueState"
import { emptyDialogue } from "../../src/dialogue/emptyDialogue"
import type { JobRecord } from "../../src/record/JobRecord"
import { toSituation } from "../../src/record/toSituation"
import { openWarnings, warningKey } from "../../src/record/warningKey"
import { createChecker } from "../../src/rules/createChecker"
import { ukBs7671 } from "../../src/rules/packs/uk-bs7671/pack"
import { restingView } from "./createMadeUpSession"
import { createMadeUpLog } from "./madeUpLog"

const place = "Bakery, flat above"
const check = (record: JobRecord) => createChecker(ukBs7671).check(toSituation(record))

const inJob = (change: Partial<SessionView>, dialogue: Partial<DialogueState>): SessionView => ({
  ...restingView,
  phase: "job",
  ear: { ...restingView.ear, state: "listening", level: 0.2 },
  backup: { at: "asleep", folder: "Job copies", savedAt: null, because: "" },
  ...change,
  dialogue: { ...emptyDialogue("device-1"), job: "job-1", ...dialogue },
})

const jobs = [
  {
    job: "a",
    place,
    openedAt: "2026-03-02T09:41:00+00:00",
    lastAt: "2026-03-02T10:12:00+00:00",
    lines: 42,
    inHand: false,
  },
  {
    job: "b",
    place: "Village hall, kitchen end",
    openedAt: "2026-02-27T13:00:00+00:00",
    lastAt: "2026-02-27T15:05:00+00:00",
    lines: 118,
    inHand: false,
  },
]

const emptyJob = (): SessionView => {
  const log = createMadeUpLog(place)
  return inJob(
    {},
    {
      record: log.record(),
      lastSaid: `New job. ${place}. Advice only. Check the edition in force, local rules and the network operator. You decide and sign.`,
    },
  )
}

const sayStart = (log: ReturnType<typeof createMadeUpLog>) => {
  log.speak("supply is T N C S neutral twenty five", [
    { kind: "earthing_arrangement", value: "TN-C-S" },
    { kind: "neutral_csa", value: 25, unit: "mm2" },
  ])
  log.speak("isolated and proved dead", [{ kind: "step_done", value: "isolated_proved_dead" }], "said_yes")
  log.speak("earthing conductor sixteen square", [
    { kind: "conductor_csa", value: 16, unit: "mm2", subject: "earthing_conductor" },
  ])
  log.speak("leads nulled", [{ kind: "step_done", value: "leads_nulled" }])
}

const sayGas = (log: ReturnType<typeof createMadeUpLog>) => {
  log.speak("gas ten square six point five metres", [
    { kind: "service", value: "gas" },
    { kind: "conductor_csa", value: 10, unit: "mm2", subject: "gas" },
    { kind: "length", value: 6.5, unit: "m", subject: "gas" },
  ])
  log.speak("pipe cleaned clamp on label on", [
    { kind: "step_done", value: "pipe_cleaned", subject: "gas" },
    { kind: "step_done", value: "clamp_fitted", subject: "gas" },
    { kind: "step_done", value: "label_fitted", subject: "gas" },
  ])
  log.speak("four fifty from the meter", [{ kind: "distance", value: 450, unit: "mm", subject: "gas" }])
  log.speak("one end off", [{ kind: "step_done", value: "one_end_disconnected", subject: "gas" }])
}

/** Gas is nearly done and its reading waits for a yes; nothing is wrong. */
const readingWaits = (): SessionView => {
  const log = createMadeUpLog(place)
  sayStart(log)
  sayGas(log)
  const [reading] = log.speak(
    "reads zero point zero one",
    [{ kind: "resistance", value: 0.01, unit: "ohm", subject: "gas" }],
    null,
  )
  return inJob(
    {
      heard: log.heard,
      voice: { saying: "Gas. Zero point zero one ohms. Is that it?", name: "this device’s voice" },
      ear: { ...restingView.ear, state: "deaf", level: 0 },
    },
    {
      record: log.record(),
      checked: check(log.record()),
      item: "gas",
      readBack: { entries: [reading!], main: reading!, needsYes: true },
      lastHeard: { text: "reads zero point zero one", understood: true },
      lastSaid: "Gas. Zero point zero one ohms. Is that it?",
    },
  )
}

const busyLog = () => {
  const log = createMadeUpLog(place)
  sayStart(log)
  sayGas(log)
  log.speak("gas zero point zero one", [{ kind: "resistance", value: 0.01, unit: "ohm", subject: "gas" }], "said_yes")
  log.speak("back on the bar", [{ kind: "step_done", value: "connected_to_met", subject: "gas" }])
  log.speak("heating pipes ten square", [
    { kind: "service", value: "heating" },
    { kind: "conductor_csa", value: 10, unit: "mm2", subject: "heating" },
  ])
  log.enter({ kind: "length", value: 11, unit: "m", subject: "heating" }, "measured again with the tape")
  log.speak(
    "over range more than ninety nine point nine k",
    [{ kind: "resistance", value: 99900, unit: "ohm", qualifier: ">", subject: "heating" }],
    "said_yes",
  )
  log.speak("flour silo frame next to the goods entrance", [
    { kind: "service", value: "flour_silo_frame_next_to_the_goods_entrance" },
  ])
  const old = log.speak(
    "water six square",
    [
      { kind: "service", value: "water" },
      { kind: "conductor_csa", value: 6, unit: "mm2", subject: "water" },
    ],
    null,
  )
  log.add({ type: "withdrawn", entry: old[1]!, because: "denied" })
  const water = log.speak("no four square", [{ kind: "conductor_csa", value: 4, unit: "mm2", subject: "water" }], null)
  log.speak("eight metres", [{ kind: "length", value: 8, unit: "m", subject: "water" }])
  return { log, size: water[0]! }
}

/** Says the warnings that the rules find so far, as the loop does, and gives them. */
const warn = (log: ReturnType<typeof createMadeUpLog>) => {
  const found = openWarnings(log.record(), check(log.record()).findings)
  for (const one of found) log.add({ type: "said", words: `Warning. ${one.spoken}`, warns: [warningKey(one)] })
  return found
}

/** A busy job with two open warnings, a reading over range, a value by hand, and a part with a long name. */
const warningOpen = (): SessionView => {
  const { log, size } = busyLog()
  const found = warn(log)
  const record = log.record()
  return inJob(
    { heard: log.heard, ear: { ...restingView.ear, state: "speech", level: 0.7 } },
    {
      record,
      item: "water",
      checked: check(record),
      readBack: { entries: [size], main: size, needsYes: true },
      lastHeard: { text: "no four square", understood: true },
      lastSaid: `Warning. ${found[0]?.spoken}`,
    },
  )
}

/** Both warnings were kept with a reason; the size of a frame is in doubt and is being asked. */
const busyJob = (): SessionView => {
  const { log } = busyLog()
  for (const one of warn(log))
    log.add({ type: "kept", warning: warningKey(one), reason: "old bond, being replaced on Thursday" })
  const record = log.record()
  const item = "flour_silo_frame_next_to_the_goods_entrance"
  return inJob(
    { heard: log.heard, ear: { ...restingView.ear, state: "listening", level: 0.3 } },
    {
      record,
      item,
      checked: check(record),
      question: {
        kind: "conductor_csa",
        item,
        words: "Was that six, or sixteen square?",
        because: "six and sixteen sound alike",
        heard: [],
        candidates: [
          { kind: "conductor_csa", value: 6, unit: "mm2", subject: item },
          { kind: "conductor_csa", value: 16, unit: "mm2", subject: item },
        ],
      },
      lastHeard: { text: "six teen square", understood: true },
      lastSaid: "Was that six, or sixteen square?",
    },
  )
}

/** All that is open is named, and the loop asks whether to sign. */
const signOffAsked = (): SessionView => {
  const view = warningOpen()
  const words = "Two open warnings, and eleven things not said. Sign off as it is?"
  const question = { kind: "sign_off", item: null, words, because: "something is open", candidates: [], heard: [] }
  return { ...view, dialogue: { ...view.dialogue, readBack: null, question, lastSaid: words } }
}

const signedOff = (): SessionView => {
  const view = busyJob()
  const signed = { at: "2026-03-02T10:12:00+00:00", role: "worker", undone: ["Water: reading."] }
  const record = { ...view.dialogue.record, signedOff: signed }
  return { ...view, dialogue: { ...view.dialogue, record, question: null, lastSaid: "Signed off." } }
}

/** A check-in went unanswered. */
const alarm = (): SessionView => ({ ...emptyJob(), alarm: true })

/** Every named state, ready to be shown. */
const copying: SessionView["backup"] = {
  at: "on",
  folder: "Job copies",
  savedAt: "2026-03-02T09:58:00+00:00",
  because: "",
}

export const madeUpViews = {
  opening: (): SessionView => ({ ...restingView, phase: "loading" }),
  start: (): SessionView => ({ ...restingView, jobs, backup: copying }),
  startFirst: (): SessionView => ({ ...restingView, ear: { ...restingView.ear, loading: 0.42 } }),
  startTrouble: (): SessionView => ({
    ...restingView,
    jobs,
    notices: [
      {
        id: "1",
        kind: "trouble",
        words: "The microphone was refused. Allow it in the browser’s settings, or type instead.",
      },
      { id: "2", kind: "news", words: "The job file was taken in: 42 lines." },
    ],
  }),
  emptyJob,
  readingWaits,
  warningOpen,
  busyJob,
  signOffAsked,
  signedOff,
  alarm,
} satisfies Record<string, () => SessionView>
