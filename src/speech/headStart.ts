/**
 * What is said so much more often than what it is mistaken for that it is taken for the answer when both fit about as
 * well. It only chooses: a yes must still lead the plain no by itself, and a reading waits for its yes.
 */
import { noes, yeses } from "./rivals"

/** Nats by which the answer may fall short of its rival. */
const start = 12
/** A bond reads less than an ohm, and "nine point" sounds like "nought point". */
const lowReading = /\b(nought|zero|oh) point\b/

/** A bare yes or no fits in noise no better than "no eight", and that would put a wrong number forward. */
export const headStart = (said: string): number =>
  yeses.includes(said) || noes.includes(said) || lowReading.test(said) ? start : 0
