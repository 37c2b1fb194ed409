/**
 * Tells the other windows and workers of this browser which jobs have new lines, so that what they show is what is stored.
 * Who tells is not told himself. Where the browser has no channels, a window reads again when it is next looked at.
 */
import type { LogLine } from "../../record/LogLine"
import type { Store } from "../../record/Store"

export interface JobNews {
  tell(jobs: readonly string[]): void
  /** Calls back with the jobs that others wrote to, until what it gives is called. */
  watch(changed: (jobs: readonly string[]) => void): () => void
}

const channelName = "bothhands.jobs"

const noNews: JobNews = { tell: () => {}, watch: () => () => {} }

export const createJobNews = (): JobNews => {
  if (typeof BroadcastChannel === "undefined") return noNews
  const channel = new BroadcastChannel(channelName)
  const watchers = new Set<(jobs: readonly string[]) => void>()
  channel.onmessage = ({ data }: MessageEvent<readonly string[]>) => {
    for (const changed of watchers) changed(data)
  }
  return {
    tell: (jobs) => channel.postMessage(jobs),
    watch: (changed) => {
      watchers.add(changed)
      return () => void watchers.delete(changed)
    },
  }
}

const jobsOf = (lines: readonly LogLine[]): string[] => [...new Set(lines.map((line) => line.job))]

/** The same store; once something is written, the others hear of it. */
export const tellingStore = (store: Store, news: JobNews): Store => ({
  append: async (lines, from) => {
    const added = await store.append(lines, from)
    if (added.ok && lines.length > 0) news.tell(jobsOf(lines))
    return added
  },
  strike: async (left, mark) => {
    const struck = await store.strike(left, mark)
    if (struck.ok) news.tell([left.job])
    return struck
  },
  read: (job) => store.read(job),
  jobs: () => store.jobs(),
  newest: (most) => store.newest(most),
  rows: () => store.rows(),
  renew: (jobs) => store.renew(jobs),
  rowless: () => store.rowless(),
  sources: (job) => store.sources(job),
  close: () => store.close(),
})
