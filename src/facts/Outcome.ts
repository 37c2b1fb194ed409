/** Refusals are values: what could not be done says why, in words fit to be spoken. */

export type Refusal = { ok: false; because: string }
export type Outcome<T = void> = { ok: true; value: T } | Refusal

export const done = <T>(value: T): Outcome<T> => ({ ok: true, value })
export const refuse = (because: string): Refusal => ({ ok: false, because })
