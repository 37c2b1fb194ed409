/**
 * What the worker set on this device. A field that is missing or makes no sense becomes the usual one and never costs the
 * others, so settings of an older or a newer version, or damaged ones, can always be read.
 */
import { z } from "zod"
import { Preferences, usualPreferences } from "../../dialogue/Preferences"
import { EveryMinutes } from "../../facts/Interpretation"
import { earIds } from "../../speech/EarId"
import { VoiceFit } from "../../speech/VoiceFit"
import { keepForChoices } from "../sound/keepFor"

const { shape } = Preferences

/** How much larger than the browser's own the text is, in per cent. */
export const textSizes = [100, 125, 150, 175, 200] as const

/** After how many seconds of silence an unanswered warning is said again. It cannot be turned off. */
export const reWarnSeconds = [6, 12, 30, 60] as const

const Contact = z
  .string()
  .trim()
  .max(30)
  .regex(/^[+\d][\d ()-]*$|^$/)

/** Whether a text is a telephone number that a link can hold, or empty. */
export const isNumber = (text: string): boolean => Contact.safeParse(text).success

export const Settings = z.object({
  v: z.literal(1).catch(1),
  theme: z.enum(["system", "light", "dark", "contrast"]).catch("system"),
  textPercent: z.union(textSizes.map((size) => z.literal(size))).catch(100),
  verbosity: shape.verbosity.catch(usualPreferences.verbosity),
  volumeStep: shape.volumeStep.catch(usualPreferences.volumeStep),
  rateStep: shape.rateStep.catch(usualPreferences.rateStep),
  /** A loud place: every answer begins with a short sound, and the words come after a pause, at full volume. */
  soundFirst: z.boolean().catch(false),
  reWarnSeconds: z.union(reWarnSeconds.map((seconds) => z.literal(seconds))).catch(12),
  /** The screen stays on while the app listens. */
  keepAwake: z.boolean().catch(true),
  /** Voices that are spoken on somebody's server may be used: what is said would leave the device. */
  remoteVoices: z.boolean().catch(false),
  /** The worker wears a headset: the ear stays open while the app speaks, and speech stops it. */
  headset: z.boolean().catch(false),
  /** Which ear listens; all but the first hand the sound to the browser's own recogniser. */
  ear: z.enum(earIds).catch("offline"),
  /** What the offline ear has learnt of this worker's voice; null where it has learnt nothing. */
  voiceFit: VoiceFit.nullable().catch(null),
  /** The sound of what was said is kept on this device, until the time that `keepSoundFor` tells. */
  keepSound: z.boolean().catch(false),
  keepSoundFor: z.enum(keepForChoices).catch("30"),
  /** Minutes between check-ins that are offered on the screen; they start with a job only when the worker says so. */
  checkInMinutes: EveryMinutes.catch(30),
  /** A telephone number to reach when a check-in goes unanswered; empty for none. */
  contact: Contact.catch(""),
  /** The first lesson was taken, or put aside. */
  lessonSeen: z.boolean().catch(false),
})
export type Settings = z.infer<typeof Settings>

/** Everything as it comes. */
export const usualSettings: Settings = Settings.parse({})

/** What stood on the device, whatever it was. */
export const readSettings = (text: string | null): Settings => {
  try {
    const found: unknown = JSON.parse(text ?? "{}")
    return Settings.safeParse(found).data ?? usualSettings
  } catch {
    return usualSettings
  }
}

/** The settings that can be changed by voice as well. */
export const preferenceKeys = ["verbosity", "volumeStep", "rateStep"] as const

/** How the worker is spoken to, for the loop. */
export const preferencesOf = ({ verbosity, volumeStep, rateStep }: Settings): Preferences => ({
  verbosity,
  volumeStep,
  rateStep,
})
