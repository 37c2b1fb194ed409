/**
 * One listening of the browser's recogniser, from start to end. Its events cannot be trusted to come: a listening that
 * neither ends nor answers is stopped, then aborted, then thrown away with its object, since the next start on it would
 * throw (S07). Results are taken for a little while after the end, because some come late (S04).
 */
import { type Folded, foldResults, plainWords } from "./foldResults"

/** The part of the browser's recogniser that is used. */
export type Recognition = Pick<
  SpeechRecognition,
  "lang" | "continuous" | "interimResults" | "maxAlternatives" | "start" | "stop" | "abort"
> &
  Record<"onstart" | "onaudiostart" | "onsoundstart" | "onspeechstart" | "onend", ((event: never) => void) | null> & {
    onresult: ((event: SpeechRecognitionEvent) => void) | null
    onerror: ((event: Pick<SpeechRecognitionErrorEvent, "error">) => void) | null
    processLocally?: boolean
    phrases?: unknown
  }

export type SessionEnd =
  /** It ended by itself or was asked to. */
  | { by: "end" }
  | { by: "error"; error: string }
  /** The cap was reached with no end: `sound` tells whether sound had come in. */
  | { by: "cap"; sound: boolean }

export interface SessionHooks {
  /** Sound or words have begun to come in. */
  alive(): void
  speech(): void
  /** Finished words, once each. */
  words(folded: Folded): void
  /** Once, after everything else. */
  over(end: SessionEnd): void
}

export interface RecognitionSession {
  /** Asks it to end; what was said is still handed over. */
  stop(): void
  /** Ends it now; what was said in it is dropped. */
  drop(): void
  readonly hasWords: boolean
}

/** No listening is longer, in ms, whatever events come; then how long `stop` and `abort` are given to work. */
export const capMs = 15_000
const [stopMs, abortMs] = [1000, 500]
/** Words that have not changed for so long are finished, though the recogniser has not said so. */
export const settledMs = 2500
/** How long results are still taken after the end. */
export const lateMs = 400

export const runSession = (recognition: Recognition, hooks: SessionHooks): RecognitionSession => {
  let folded: Folded = { text: "", isFinal: false, others: [] }
  /** Words of this listening that were handed over already. */
  let handed: string[] = []
  let [sound, isOver, ending] = [false, false, false]
  let settling: ReturnType<typeof setTimeout> | undefined
  let error: string | null = null

  const handOver = () => {
    clearTimeout(settling)
    const fresh = withoutWords(folded.text, handed)
    if (fresh !== "") hooks.words({ ...folded, text: fresh, others: handed.length > 0 ? [] : folded.others })
    handed = plainWords(folded.text)
  }
  const finish = (end: SessionEnd, keep = true) => {
    if (isOver) return
    isOver = true
    clearTimeout(cap)
    if (keep) handOver()
    clearTimeout(settling)
    for (const name of ["onstart", "onaudiostart", "onsoundstart", "onspeechstart", "onresult", "onerror", "onend"])
      recognition[name as "onend"] = null
    hooks.over(end)
  }
  const atCap = () => {
    quietly(() => recognition.stop())
    setTimeout(() => {
      if (isOver) return
      quietly(() => recognition.abort())
      setTimeout(() => finish({ by: "cap", sound }), abortMs)
    }, stopMs)
  }
  const cap = setTimeout(atCap, capMs)

  const take = (event: SpeechRecognitionEvent) => {
    const before = folded
    const now = foldResults(entriesOf(event))
    // A blank result says nothing, and must not wipe out what was said (S03).
    if (now.text === "") return
    if (startsAnew(now.text, before.text)) {
      handOver()
      handed = []
    }
    folded = now
    hooks.speech()
    clearTimeout(settling)
    settling = setTimeout(handOver, settledMs)
  }

  recognition.onstart = () => {}
  recognition.onaudiostart = () => hooks.alive()
  recognition.onsoundstart = recognition.onspeechstart = () => {
    sound = true
    hooks.alive()
  }
  recognition.onresult = take
  recognition.onerror = (event) => {
    error = event.error
    // Not every browser sends an end after an error.
    setTimeout(() => finish({ by: "error", error: event.error }), lateMs)
  }
  recognition.onend = () => {
    if (ending) return
    ending = true
    setTimeout(() => finish(error === null ? { by: "end" } : { by: "error", error }), lateMs)
  }
  try {
    recognition.start()
  } catch {
    setTimeout(() => finish({ by: "error", error: "aborted" }), 0)
  }

  return {
    stop: () => {
      quietly(() => recognition.stop())
      setTimeout(() => finish({ by: "end" }), stopMs)
    },
    drop: () => {
      quietly(() => recognition.abort())
      finish({ by: "end" }, false)
    },
    get hasWords() {
      return withoutWords(folded.text, handed) !== ""
    },
  }
}

const quietly = (act: () => void) => {
  try {
    act()
  } catch {
    // A recogniser that is not running may throw when it is stopped.
  }
}

const entriesOf = ({ results }: SpeechRecognitionEvent) =>
  Array.from(results, (result) => ({
    text: result[0]?.transcript ?? "",
    isFinal: result.isFinal,
    others: Array.from(result, (one) => one.transcript).slice(1),
  }))

/** What is left of a text when the words that it begins with are taken away; all of it where it begins otherwise. */
const withoutWords = (text: string, words: readonly string[]): string => {
  const all = text.split(" ").filter((word) => word !== "")
  const same = words.length > 0 && words.every((word, at) => plainWords(all[at] ?? "")[0] === word)
  return all.slice(same ? words.length : 0).join(" ")
}

/** A text that shares not even its first word with the one before is a new utterance, when that one had more words. */
const startsAnew = (text: string, before: string): boolean => {
  const [now, then] = [plainWords(text), plainWords(before)]
  return then.length > 0 && now[0] !== then[0] && now.length < then.length
}
