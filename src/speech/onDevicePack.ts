/**
 * Whether the browser can recognise English on the device, and fetching the pack for it. Both answers may never come
 * (S10), so each wait has an end, and only a plain "available" counts as yes. Asked for each language by itself, as one
 * that is unknown spoils the answer for all.
 */

/** The calls that some browsers have; typed here because browsers without them are the rule. */
export interface OnDeviceCalls {
  available?(options: { langs: string[]; processLocally: boolean }): Promise<string>
  install?(options: { langs: string[]; processLocally: boolean }): Promise<boolean>
}

/** How long each call may take, in ms. */
export const [availableMs, installMs] = [2000, 60_000]

/** The first of these languages that is there on the device, or could be fetched; null where there is none. */
export const findOnDevice = async (calls: OnDeviceCalls, langs: readonly string[]): Promise<string | null> => {
  for (const lang of langs) if ((await ask(calls, lang)) === "available") return lang
  for (const lang of langs) {
    const installed = await within(installMs, () => calls.install?.({ langs: [lang], processLocally: true }))
    if (installed === true && (await ask(calls, lang)) === "available") return lang
  }
  return null
}

const ask = (calls: OnDeviceCalls, lang: string) =>
  within(availableMs, () => calls.available?.({ langs: [lang], processLocally: true }))

/** What the call answers, or undefined where it throws, refuses, or takes too long. */
const within = async <T>(waitMs: number, call: () => Promise<T> | undefined): Promise<T | undefined> => {
  let timer: ReturnType<typeof setTimeout> | undefined
  const tooLate = new Promise<undefined>((resolve) => {
    timer = setTimeout(() => resolve(undefined), waitMs)
  })
  try {
    return await Promise.race([call(), tooLate])
  } catch {
    return undefined
  } finally {
    clearTimeout(timer)
  }
}
