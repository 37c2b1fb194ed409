/** A session that shows one view and remembers what the screen asked of it. */

import { noBackup } from "../../src/app/backup/BackupState"
import type { Session, SessionView } from "../../src/app/Session"
import { SettingsKeeper } from "../../src/app/settings/SettingsKeeper"
import { emptyDialogue } from "../../src/dialogue/emptyDialogue"
import { done } from "../../src/facts/Outcome"
import { createReader, type Reader } from "./learn/createReader"

/** Everything at rest: no job, ear and voice ready. */
export const restingView: SessionView = {
  phase: "start",
  dialogue: emptyDialogue("device-1"),
  ear: { state: "stopped", loading: null, level: 0, name: "on this device" },
  voice: { saying: null, name: "this device’s voice" },
  spoken: [],
  heard: {},
  jobs: [],
  alarm: false,
  follows: false,
  backup: noBackup,
  notices: [],
}

export interface MadeUpSession extends Session {
  /** Every act the screen asked for, in order: the method's name and what it was given. */
  readonly asked: unknown[][]
  /** Who reads the prompts, once that was begun. */
  readonly reader: Reader | null
  show(view: SessionView): void
}

export const createMadeUpSession = (first: SessionView): MadeUpSession => {
  let view = first
  const watchers = new Set<() => void>()
  const settings = new SettingsKeeper(null)
  let reader: Reader | null = null
  const asked: unknown[][] = []
  const note =
    (name: string) =>
    (...given: unknown[]) => {
      asked.push([name, ...given])
    }
  return {
    asked,
    settings,
    get reader() {
      return reader
    },
    backup: { choose: note("choose"), wake: note("wake"), stop: note("stop") },
    sound: { sum: async () => ({ clips: 0, bytes: 0 }), clear: async () => done(undefined) },
    show(next) {
      view = next
      for (const changed of watchers) changed()
    },
    subscribe(changed) {
      watchers.add(changed)
      return () => watchers.delete(changed)
    },
    snapshot: () => view,
    send: note("send"),
    type: note("type"),
    newJob: note("newJob"),
    resumeJob: note("resumeJob"),
    closeJob: note("closeJob"),
    listen: note("listen"),
    hearSample: note("hearSample"),
    saveJobFile: note("saveJobFile"),
    saveReport: note("saveReport"),
    share: note("share"),
    saveAllJobs: note("saveAllJobs"),
    prompt: note("prompt"),
    takeOver: note("takeOver"),
    startLesson: async () => {
      asked.push(["startLesson"])
      return createMadeUpSession(view)
    },
    startLearning: async () => {
      asked.push(["startLearning"])
      reader = createReader(settings)
      return reader.learner
    },
    openJobFile: note("openJobFile"),
    dismiss: note("dismiss"),
  }
}
