/** A session that also shows the notices about storage and versions, and has the browser asked to keep the first job. */
import type { Notice, Session, SessionView } from "../Session"
import type { OfflineWatch } from "./OfflineWatch"

export const createWatchedSession = (session: Session, watch: OfflineWatch): Session => {
  let seen: { view: SessionView; more: readonly Notice[]; shown: SessionView } | null = null

  const snapshot = (): SessionView => {
    const view = session.snapshot()
    const more = watch.notices(view.phase)
    if (seen?.view !== view || seen.more !== more) {
      const shown = more.length === 0 ? view : { ...view, notices: [...view.notices, ...more] }
      seen = { view, more, shown }
    }
    return seen.shown
  }

  return {
    settings: session.settings,
    backup: session.backup,
    sound: session.sound,
    snapshot,
    subscribe: (changed) => {
      const leave = [session.subscribe(changed), watch.subscribe(changed)]
      return () => {
        for (const one of leave) one()
      }
    },
    newJob: (place) => {
      // First the session: what a tap allows does not outlast a wait.
      session.newJob(place)
      void watch.keepJobs()
    },
    resumeJob: (job) => {
      session.resumeJob(job)
      void watch.keepJobs()
    },
    dismiss: (notice) => {
      if (!watch.dismiss(notice)) session.dismiss(notice)
    },
    send: (event) => session.send(event),
    type: (words) => session.type(words),
    startLesson: () => session.startLesson(),
    startLearning: () => session.startLearning(),
    closeJob: () => session.closeJob(),
    listen: (on) => session.listen(on),
    hearSample: () => session.hearSample(),
    share: (what) => session.share(what),
    saveJobFile: () => session.saveJobFile(),
    saveReport: () => session.saveReport(),
    saveAllJobs: () => session.saveAllJobs(),
    prompt: (words, shown) => session.prompt(words, shown),
    takeOver: () => session.takeOver(),
    openJobFile: (file) => session.openJobFile(file),
  }
}
