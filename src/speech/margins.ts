/**
 * When an answer of the recogniser is believed. It always answers something, and its own scores for wrong answers overlap
 * those for right ones; so an answer is weighed against what else the same sound could have been.
 *
 * Measured with `npm run bench -- ear` on sentences made by four synthetic voices; the limits were chosen on every other
 * sentence and hold on the rest.
 */

/** Nats a frame of speech by which the answer may fall short of free phones before it is no answer at all. */
export const silentFit = -1.1
/** Nats a frame from which the answer fits as well as right answers do. */
export const plainFit = -0.75
/** Nats by which the answer must lead the nearest other number. */
export const plainLead = 30

/** Null: none of this was said. 1 and more: plain. Between 0 and 1: to be asked about. */
export const marginOf = (fit: number, lead: number | null): number | null => {
  if (fit < silentFit) return null
  const byFit = (fit - silentFit) / (plainFit - silentFit)
  const byLead = lead === null ? byFit : Math.max(0, lead) / plainLead
  return Math.round(Math.min(byFit, byLead) * 1000) / 1000
}
