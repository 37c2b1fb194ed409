/**
 * The offline ear in the browser: microphone, sound thread and worker behind one listener. No sound leaves the device.
 * What the worker hears while the app speaks was said before it began; it waits here until the app is quiet again.
 */
import type { Heard } from "../facts/Heard"
import { done, type Outcome, refuse } from "../facts/Outcome"
import { createEarWorkerClient, type EarWorker } from "./earWorkerClient"
import type { Listener, ListenerEvents } from "./Listener"
import { type Microphone, openMicrophone } from "./microphone"
import type { WhoseVoice } from "./VoiceFit"

export interface OfflineListenerOptions {
  /** Address of the ear pack's folder, relative to the page or absolute, with a slash at its end. */
  assets: string
  makeWorker?: () => EarWorker
  openMicrophone?: typeof openMicrophone
}

export interface OfflineListener extends Listener {
  /** Loads engine and model ahead of the first grammar. Opens no microphone. */
  warm(): Promise<Outcome>
  /** Whose voice it hears from the next utterance on. */
  fitTo(voice: WhoseVoice): void
}

/** Absolute address of the pack: a worker has another idea of where "here" is. */
const packAddress = (assets: string) =>
  typeof document === "undefined" ? new URL(assets).href : new URL(assets, document.baseURI).href

const defaultWorker = () => new Worker(new URL("./earWorker.ts", import.meta.url), { type: "module" })

export const createOfflineListener = (options: OfflineListenerOptions): OfflineListener => {
  const open = options.openMicrophone ?? openMicrophone
  let events: ListenerEvents | null = null
  let microphone: Microphone | null = null
  let deaf = false
  let held: Heard[] = []

  const client = createEarWorkerClient(options.makeWorker ?? defaultWorker, packAddress(options.assets), {
    message: (message) => {
      if (message.tell === "heard") {
        if (deaf) held.push(message.heard)
        else events?.heard(message.heard)
      } else if (message.tell === "fit") events?.fit?.(message.id, message.fit)
      else if (message.tell === "sound") events?.sound?.(message.id, message.sound)
      else if (message.tell === "state") events?.state?.(message.state)
      else events?.level?.(message.level)
    },
    restarted: () => {
      void reopen()
      events?.stumbled?.("The ear stumbled. Say that again.")
    },
    failed: (because) => events?.failed?.(because),
  })

  const openAndHear = () =>
    open({
      lost: (because) => {
        events?.failed?.(because)
        events?.state?.("stopped")
      },
      port: (port, changed) => {
        client.hear(port)
        if (changed) events?.stumbled?.("The microphone has changed. Say that again.")
      },
    })

  const reopen = async () => {
    await microphone?.close()
    microphone = null
    if (!events) return
    const opened = await openAndHear()
    if (!opened.ok) return events?.failed?.(opened.because)
    microphone = opened.value
    if (deaf) microphone.mark({ mark: "deafen" })
  }

  const stop = async () => {
    events = null
    held = []
    deaf = false
    const open = microphone
    microphone = null
    await open?.close()
    await client.stop()
  }

  return {
    warm: () => client.warm(),
    fitTo: (voice) => client.fitTo(voice),
    prepare: (grammar) => client.prepare(grammar),
    start: async (listenerEvents): Promise<Outcome> => {
      if (events) return refuse("The ear is listening already.")
      events = listenerEvents
      events.state?.("starting")
      const started = await client.start()
      const opened = started.ok ? await openAndHear() : started
      if (!opened.ok) {
        await stop()
        return opened
      }
      microphone = opened.value as Microphone
      return done(undefined)
    },
    deafen: () => {
      deaf = true
      microphone?.mark({ mark: "deafen" })
    },
    undeafen: (marginMs) => {
      deaf = false
      microphone?.mark({ mark: "undeafen", marginMs })
      const waiting = held
      held = []
      for (const heard of waiting) events?.heard(heard)
    },
    stop,
    release: async () => {
      await stop()
      client.end()
    },
  }
}
