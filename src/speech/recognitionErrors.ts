/**
 * What the browser's recogniser means by its errors, learnt from the field: `network` comes from browsers that have no
 * speech service at all, however good the signal (S08), so it is not tried again and nobody is sent to look for a signal.
 */

/** `again`: listen on; `language`: try the next language; `plain`: without phrase hints; `giveUp`: use the other ear. */
export type AfterError = "again" | "language" | "plain" | "giveUp"

const meanings: Readonly<Record<string, AfterError>> = {
  "no-speech": "again",
  aborted: "again",
  "language-not-supported": "language",
  "phrases-not-supported": "plain",
  "bad-grammar": "plain",
}

/** What to do after an error. An error that nobody knows ends the browser's turn. */
export const afterError = (error: string): AfterError => meanings[error] ?? "giveUp"

const reasons: Readonly<Record<string, string>> = {
  network: "This browser has no speech service.",
  "not-allowed": "The browser did not let its recogniser use the microphone.",
  "service-not-allowed": "This browser does not allow its recogniser here.",
  "audio-capture": "The browser's recogniser gets no sound.",
  "language-not-supported": "The browser's recogniser has no English here.",
}

/** Why the browser's recogniser is left, fit to be spoken. */
export const reasonFor = (error: string): string => reasons[error] ?? "The browser's recogniser does not work here."
