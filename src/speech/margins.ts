/**
 * When an answer of the recogniser is believed. It always answers something, and its own scores for wrong answers overlap
 * those for right ones; so an answer is weighed against what else the same sound could have been.
 *
 * The limits were chosen on sentences of the product (40) and site talk (73), made by four synthetic voices with nothing
 * asked; `npm run bench -- ear` shows what they do on other sentences and in noise. In nats a frame, `worstWord` was -2.4
 * to 1.9 for right answers and -14 to -3.2 for site talk, `whole` -5.0 to -2.5 and -9.9 to -5.4; together they leave a
 * gap that neither has alone.
 */
import type { Fit } from "./measureFit"

/** What `whole` usually is, and how much it counts beside the worst word. */
const [usualWhole, wholeWeight] = [-4, 0.5]

/** What an answer is judged by. */
export interface Limits {
  /** Below this fit none of the answer was said; from the other on it is as good as right answers are. */
  silentFit: number
  plainFit: number
  /** Nats hidden in silence: up to the first a breath, from the second on words that the grammar lacks. */
  plainHidden: number
  silentHidden: number
  /** Nats by which the answer must lead the nearest other number. Wrong numbers led by 0 to 20, right ones mostly by 100. */
  plainLead: number
}
/** The limits that the product is shipped with. */
export const shippedLimits: Limits = {
  silentFit: -3.4,
  plainFit: -2,
  plainHidden: 40,
  silentHidden: 150,
  plainLead: 30,
}

/**
 * The margin where the fit is only just good enough. It is not nought, as nothing else of the grammar was heard either:
 * a yes that fits badly but leads by far is a yes.
 */
const leastFit = 0.3
/** So far below it, an answer with one word changed may still be what was said. */
const nearly = 1.5
/** Odds of less than this, in nats, are even: the other number may as well have been said, and both are offered. */
export const tossUpLead = 8
/** A digit is not said in less, in seconds: what is shorter was put in to fit the grammar. */
const shortestDigit = 0.09
/** The margin of an answer that is to be asked about for a reason that has no measure. */
const doubtful = 0.5

/**
 * By how much the limits are lower in full noise, in nats a frame: there free phones follow the noise itself. Of 57 right
 * answers at 20 dB of white noise one in ten fitted worse than -3.4, and of 24 of site talk none better than -4.0.
 */
const [silentFalls, plainFalls] = [1, 0.8]
/** By how many times a rival has to be led further: fitted to noise the model's scores lie further apart, right or wrong. */
const leadGrows = 0.5
/** What may be hidden in silence where others talk, in nats: there it is their words. */
const besideTalk = { plainHidden: 130, silentHidden: 250 }
/** What more may be hidden in full noise: free phones follow that as well. */
const hiddenGrows = 15

/** The limits for what stood behind an answer. */
const limitsFor = ({ noise, wavers }: Fit, limits: Limits): Limits => ({
  ...limits,
  plainHidden: limits.plainHidden + hiddenGrows * noise,
  silentHidden: limits.silentHidden + hiddenGrows * noise,
  ...(wavers && besideTalk),
  silentFit: limits.silentFit - silentFalls * noise,
  plainFit: limits.plainFit - plainFalls * noise,
  plainLead: limits.plainLead * (1 + leadGrows * noise),
})

/** One figure for how well an answer fits, in nats a frame. */
export const levelOf = (fit: Fit) => fit.worstWord + wholeWeight * (fit.whole - usualWhole)

/** Whether the answer, or one that differs from it in a word, may yet be good enough. */
export const isNearlyFit = (fit: Fit, limits: Limits = shippedLimits): boolean => {
  const { silentFit, silentHidden } = limitsFor(fit, limits)
  return levelOf(fit) > silentFit - nearly && fit.hidden <= silentHidden
}

/**
 * Null: none of this was said. 1 and more: plain. From 0 to 1: to be asked about. `lead` is how far the answer is ahead
 * of the nearest other number in nats, or null where it holds none.
 */
export const marginOf = (fit: Fit, lead: number | null, limits: Limits = shippedLimits): number | null => {
  const { silentFit, plainFit, plainHidden, silentHidden, plainLead } = limitsFor(fit, limits)
  const level = levelOf(fit)
  if (level < silentFit || fit.hidden > silentHidden) return null
  const parts = [
    leastFit + ((1 - leastFit) * (level - silentFit)) / (plainFit - silentFit),
    fit.hidden > plainHidden ? (silentHidden - fit.hidden) / (silentHidden - plainHidden) : null,
    lead === null ? null : Math.max(0, lead) / plainLead,
    fit.shortestNumber !== null && fit.shortestNumber < shortestDigit ? doubtful : null,
  ].filter((part) => part !== null)
  return Math.round(Math.min(...parts) * 1000) / 1000
}
