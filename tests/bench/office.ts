/**
 * The office over ten thousand jobs in a real browser: how long the list takes to stand, how long a search takes, how
 * long one job takes to open, and what memory it all needs. Needs a build in `dist`. The jobs are invented; they are put
 * straight into the page's own database, as the store would have written them. JOBS sets another number; PROFILE names a
 * folder in which they are kept for the next time, and a filling that was broken off is gone on with; MINUTES breaks
 * off the filling with lines after so long.
 */
import type { Page } from "playwright-core"
import { followedPack } from "../../src/app/followedPack"
import { rulesVersion } from "../../src/app/rulesVersion"
import { dropProfile, launch, makeProfile, serveApp } from "../browser/openApp"
import { makeTemplates, placeOf, type Template } from "./madeUpJobs"

const jobs = Number(process.env.JOBS ?? 10_000)
const linesEach = 200
const minutes = Number(process.env.MINUTES ?? Number.POSITIVE_INFINITY)
const atOnce = 100
/** As the page stamps its rows. */
const rowVersion = `${rulesVersion()} ${followedPack.id}`

const queries = [
  "gas",
  "bakery",
  "village hall",
  "bonds under 10",
  "readings over 0.05",
  "gas reading over 0.04",
  "open stops",
  "to look at",
  "kept",
  "last month",
  "in february",
  "mill lane",
  "said valve",
  "no room behind the oven",
  "TT",
  "water under 10 open stops",
  "hall by the green not signed",
  "flour silo frame",
  "s",
  "lengths over 30 m",
]

const quantile = (times: readonly number[], share: number) =>
  [...times].sort((a, b) => a - b)[Math.min(times.length - 1, Math.floor(times.length * share))]!

interface Batch {
  jobs: { number: number; place: string; dayShift: number }[]
  templates: Template[]
  version: string
  into: "rows" | "lines"
}

/** Runs in the page. */
const seed = async ({ jobs, templates, version, into }: Batch): Promise<void> => {
  const database = await new Promise<IDBDatabase>((fulfil, fail) => {
    const opening = indexedDB.open("bothhands")
    opening.onsuccess = () => fulfil(opening.result)
    opening.onerror = () => fail(opening.error)
  })
  const writing = database.transaction(into, "readwrite", { durability: "relaxed" })
  const store = writing.objectStore(into)
  for (const { number, place, dayShift } of jobs) {
    const template = templates[number % templates.length]!
    const shift = (at: string) => new Date(Date.parse(at) - dayShift * 86_400_000).toISOString()
    const text = JSON.stringify(into === "rows" ? template.row : template.lines)
      .replaceAll("@place", place)
      .replaceAll("@", String(number))
    const made = JSON.parse(text)
    if (into === "lines") for (const line of made) store.add({ ...line, at: shift(line.at) })
    else {
      const days = { openedAt: shift(made.openedAt), lastAt: shift(made.lastAt) }
      store.add({ job: made.job, version, row: { ...made, ...days } })
    }
  }
  await new Promise<void>((fulfil, fail) => {
    writing.oncomplete = () => fulfil()
    writing.onerror = () => fail(writing.error)
  })
  database.close()
}

/** How many jobs an earlier filling has put in; each batch is in whole or not at all. */
const countBefore = (page: Page): Promise<{ rows: number; lines: number }> =>
  page.evaluate(async () => {
    const database = await new Promise<IDBDatabase>((fulfil) => {
      const opening = indexedDB.open("bothhands")
      opening.onsuccess = () => fulfil(opening.result)
    })
    const reading = database.transaction(["rows", "lines"])
    const counting = reading.objectStore("rows").count()
    const walking = reading.objectStore("lines").index("job").openKeyCursor(null, "nextunique")
    let lines = 0
    walking.onsuccess = () => {
      if (!walking.result) return
      lines++
      walking.result.continue()
    }
    await new Promise<void>((fulfil) => {
      reading.oncomplete = () => fulfil()
    })
    database.close()
    return { rows: counting.result, lines }
  })

/**
 * All rows first, which is what the list and the search read; then the lines, newest job first, which is what opening one
 * reads. Gives the number of jobs that have their lines.
 */
const fill = async (page: Page): Promise<number> => {
  const templates = makeTemplates(40, linesEach)
  const version = rowVersion
  const before = await countBefore(page)
  const all = Array.from({ length: jobs }, (_, number) => ({ number, ...placeOf(number) }))
  const newest = all.toSorted((a, b) => a.dayShift - b.dayShift || a.number - b.number)
  const put = (some: Batch["jobs"], into: Batch["into"]) =>
    page.evaluate(seed, { jobs: some, templates, version, into })
  for (let from = before.rows; from < jobs; from += 2000) await put(all.slice(from, from + 2000), "rows")
  const until = performance.now() + minutes * 60_000
  let filled = before.lines
  for (; filled < jobs && performance.now() < until; filled += atOnce)
    await put(newest.slice(filled, filled + atOnce), "lines")
  return Math.min(filled, jobs)
}

/** Rows of an earlier filling count as made by the rules of this build, so that what is measured is a list at rest. */
const restamp = (page: Page): Promise<void> =>
  page.evaluate(async (version) => {
    const database = await new Promise<IDBDatabase>((fulfil) => {
      const opening = indexedDB.open("bothhands")
      opening.onsuccess = () => fulfil(opening.result)
    })
    const writing = database.transaction("rows", "readwrite")
    const store = writing.objectStore("rows")
    const all = store.getAll()
    all.onsuccess = () => {
      for (const row of all.result) if (row.version !== version) store.put({ ...row, version })
    }
    await new Promise<void>((fulfil) => {
      writing.oncomplete = () => fulfil()
    })
    database.close()
  }, rowVersion)

/**
 * Milliseconds that the page's main thread has worked since it was loaded, by the processor's clock: on a busy machine it
 * tells what the page itself takes.
 */
const openWork = async (page: Page): Promise<() => Promise<number>> => {
  const client = await page.context().newCDPSession(page)
  await client.send("Performance.enable", { timeDomain: "threadTicks" })
  return async () => {
    const { metrics } = await client.send("Performance.getMetrics")
    return metrics.find((one) => one.name === "TaskDuration")!.value * 1000
  }
}

/** When the list stood, in milliseconds from the reload. Asked of the page itself: a busy page answers late. */
interface ListTimes {
  /** The count of all jobs and the first rows are drawn. */
  stands?: number
  /** All jobs have been read and can be searched. */
  read?: number
}

/** Runs in the page, before anything of its own. */
const watchList = () => {
  const times: ListTimes = {}
  Object.assign(window, { listTimes: times })
  const drawn = (which: keyof ListTimes) =>
    requestAnimationFrame(() =>
      setTimeout(() => {
        times[which] ??= performance.now()
      }),
    )
  new MutationObserver(() => {
    if (!document.querySelector(".find-row")) return
    if (!times.stands) drawn("stands")
    if (!times.read && !document.querySelector(".find-count")?.textContent?.includes("being read")) drawn("read")
  }).observe(document, { childList: true, subtree: true, characterData: true })
}

const measureList = async (page: Page): Promise<Required<ListTimes>> => {
  await page.reload()
  const times = () => (window as unknown as { listTimes: ListTimes }).listTimes
  await page.waitForFunction(() => "read" in (window as unknown as { listTimes: object }).listTimes, null, {
    timeout: 180_000,
  })
  return (await page.evaluate(times)) as Required<ListTimes>
}

/** From the last key to the new count on the page, for each query, as somebody at the desk would wait. */
const measureSearch = (page: Page): Promise<number[]> =>
  page.evaluate(async (asked) => {
    const box = document.querySelector<HTMLInputElement>(".find-words input")!
    const frame = () => new Promise((fulfil) => requestAnimationFrame(() => setTimeout(fulfil)))
    const type = (text: string) => {
      Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")!.set!.call(box, text)
      box.dispatchEvent(new Event("input", { bubbles: true }))
    }
    const times: number[] = []
    for (let round = 0; round < 3; round++) {
      for (const text of asked) {
        performance.clearMeasures("bothhands.search")
        type(text)
        while (performance.getEntriesByName("bothhands.search").length === 0) await frame()
        times.push(performance.getEntriesByName("bothhands.search").at(-1)!.duration)
        type("")
        await frame()
        await frame()
      }
    }
    return times
  }, queries)

const measureOpening = async (page: Page): Promise<number[]> => {
  const times: number[] = []
  for (let round = 0; round < 10; round++) {
    const took = await page.evaluate(async () => {
      const frame = () => new Promise((fulfil) => requestAnimationFrame(() => setTimeout(fulfil)))
      const started = performance.now()
      document.querySelector<HTMLAnchorElement>(".find-row a")!.click()
      while (document.querySelector(".find") || !document.querySelector("main h1")) await frame()
      return performance.now() - started
    })
    times.push(took)
    await page.goBack()
    await page.locator(".find-row").first().waitFor()
  }
  return times
}

const megabytes = async (page: Page): Promise<number> => {
  const client = await page.context().newCDPSession(page)
  await client.send("HeapProfiler.collectGarbage")
  const { metrics } = await client.send("Performance.enable").then(() => client.send("Performance.getMetrics"))
  return metrics.find((one) => one.name === "JSHeapUsedSize")!.value / 1e6
}

export const run = async (): Promise<void> => {
  // A browser keeps what it stores by address, so the port has to be the same the next time.
  const app = await serveApp({ preview: { port: 4199, strictPort: true } })
  const profile = process.env.PROFILE ?? makeProfile()
  const context = await launch({ profile, viewport: { width: 1440, height: 900 } })
  try {
    // tsx marks functions with their names by a function that pages do not have.
    await context.addInitScript({ content: "globalThis.__name ??= (one) => one" })
    await context.addInitScript(watchList)
    const page = context.pages()[0]!
    await page.goto(`${app.url}#office`)
    await page.locator(".find-count").waitFor()
    const started = performance.now()
    const filled = await fill(page)
    await restamp(page)
    const seconds = Math.round((performance.now() - started) / 1000)
    console.log(`${jobs} jobs in the list, ${filled} of them with their ${linesEach} lines, put in within ${seconds} s`)
    const work = await openWork(page)
    const lists: Required<ListTimes>[] = []
    const listWork: number[] = []
    for (let round = 0; round < 3; round++) {
      const before = await work()
      lists.push(await measureList(page))
      const after = await work()
      // The count may begin anew with the page.
      listWork.push(after > before ? after - before : after)
    }
    const whole = (times: readonly number[]) => times.map(Math.round).join(", ")
    console.log(`list after a reload, count and first rows: ${whole(lists.map((one) => one.stands))} ms`)
    console.log(`all jobs read: ${whole(lists.map((one) => one.read))} ms; work of the page ${whole(listWork)} ms`)
    const beforeSearch = await work()
    const searches = await measureSearch(page)
    const perSearch = ((await work()) - beforeSearch) / searches.length
    console.log(`work for one search, with drawing it and the whole list again: ${perSearch.toFixed(1)} ms`)
    console.log(
      `search: median ${quantile(searches, 0.5).toFixed(1)} ms, p95 ${quantile(searches, 0.95).toFixed(1)} ms, ${searches.length} searches`,
    )
    console.log(`memory of the page, list open: ${Math.round(await megabytes(page))} MB`)
    const openings = await measureOpening(page)
    console.log(
      `opening one job: median ${Math.round(quantile(openings, 0.5))} ms, p95 ${Math.round(quantile(openings, 0.95))} ms`,
    )
    console.log(`memory of the page after that: ${Math.round(await megabytes(page))} MB`)
  } finally {
    await context.close()
    await app.close()
    if (!process.env.PROFILE) dropProfile(profile)
  }
}
