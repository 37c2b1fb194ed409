// @vitest-environment happy-dom
/** What the page keeps for use without a server, and what it says about versions and storage. */
import { createHash } from "node:crypto"
import { expect, test, vi } from "vitest"
import { FileKeeper } from "../../src/app/offline/FileKeeper"
import type { KeptFile } from "../../src/app/offline/KeptFile"
import { OfflineWatch } from "../../src/app/offline/OfflineWatch"
import { registerWorker } from "../../src/app/offline/registerWorker"
import { askToKeep, fewBytes, freeBytes } from "../../src/app/offline/storageCare"
import { createWatchedSession } from "../../src/app/offline/watchedSession"
import { whenLoaded } from "../../src/app/offline/whenLoaded"
import { createMadeUpSession, restingView } from "./createMadeUpSession"

const scope = "https://here.example/app/"

const fileOf = (path: string, content: string, kept: KeptFile["kept"] = "start"): KeptFile => ({
  path,
  hash: createHash("sha256").update(content).digest("hex"),
  kept,
})

/** A cache as the browser has one, as far as it is used here. */
const makeCaches = () => {
  const kept = new Map<string, Response>()
  const cache = {
    match: async (key: string) => kept.get(key)?.clone(),
    put: async (key: string, response: Response) => void kept.set(key, response),
    delete: async (key: string) => kept.delete(key),
    keys: async () => [...kept.keys()].map((url) => ({ url })),
  }
  return { kept, caches: { open: async () => cache as unknown as Cache } }
}

/** A server that holds these files, and what it was asked for. */
const makeServer = (contents: Record<string, string>) => {
  const asked: string[] = []
  const fetchFile = async (address: string, init: RequestInit) => {
    const path = address.slice(scope.length)
    asked.push(`${path} ${init.cache}`)
    const content = contents[path]
    return new Response(content ?? "<title>start page</title>", { status: content === undefined ? 404 : 200 })
  }
  return { asked, fetchFile }
}

test("the first visit keeps all but what is kept on use, and later answers need no server", async () => {
  const files = [fileOf("index.html", "page"), fileOf("ear/mdef", "ear"), fileOf("samples/a.wav", "sound", "use")]
  const { caches, kept } = makeCaches()
  const server = makeServer({ "index.html": "page", "ear/mdef": "ear", "samples/a.wav": "sound" })
  const keeper = new FileKeeper({ files, scope, caches, fetchFile: server.fetchFile })
  await keeper.fill()
  expect(server.asked).toEqual(["index.html default", "ear/mdef default"])
  expect(await (await keeper.answer(keeper.fileAt(scope)!)).text()).toBe("page")
  expect(await (await keeper.answer(keeper.fileAt(`${scope}ear/mdef?again`)!)).text()).toBe("ear")
  expect(server.asked).toHaveLength(2)
  expect(await (await keeper.answer(keeper.fileAt(`${scope}samples/a.wav`)!)).text()).toBe("sound")
  expect(kept.size).toBe(3)
  expect(keeper.fileAt("https://elsewhere.example/app/index.html")).toBeUndefined()
  expect(keeper.fileAt(`${scope}jobs/unknown`)).toBeUndefined()
})

test("a newer version fetches only what changed, and the old goes once it is in use", async () => {
  const { caches, kept } = makeCaches()
  const old = makeServer({ "index.html": "old page", "ear/mdef": "ear" })
  const oldFiles = [fileOf("index.html", "old page"), fileOf("ear/mdef", "ear")]
  await new FileKeeper({ files: oldFiles, scope, caches, fetchFile: old.fetchFile }).fill()
  const fresh = makeServer({ "index.html": "new page", "ear/mdef": "ear" })
  const files = [fileOf("index.html", "new page"), fileOf("ear/mdef", "ear")]
  const keeper = new FileKeeper({ files, scope, caches, fetchFile: fresh.fetchFile })
  await keeper.fill()
  expect(fresh.asked).toEqual(["index.html default"])
  expect(kept.size).toBe(3)
  await keeper.clear()
  expect(await Promise.all([...kept.values()].map((one) => one.clone().text()))).toEqual(["ear", "new page"])
})

test("bytes of another version are never kept", async () => {
  const { caches, kept } = makeCaches()
  const server = makeServer({ "index.html": "half of the pa" })
  const files = [fileOf("index.html", "page")]
  const keeper = new FileKeeper({ files, scope, caches, fetchFile: server.fetchFile })
  await expect(keeper.fill()).rejects.toThrow(/index\.html/)
  expect(server.asked).toEqual(["index.html default", "index.html reload"])
  expect(kept.size).toBe(0)
})

test("a version that is fetched while another is in use is told once; the first of all is not", async () => {
  for (const controller of [null, {}]) {
    const installing = Object.assign(new EventTarget(), { state: "installed" })
    const registration = Object.assign(new EventTarget(), { installing, waiting: null })
    const container = { controller, register: async () => registration } as unknown as ServiceWorkerContainer
    const hooks = { newerReady: vi.fn(), notKept: vi.fn() }
    await registerWorker(container, hooks)
    installing.dispatchEvent(new Event("statechange"))
    expect(hooks.newerReady).toHaveBeenCalledTimes(controller ? 1 : 0)
    installing.state = "redundant"
    installing.dispatchEvent(new Event("statechange"))
    expect(hooks.notKept).toHaveBeenCalledTimes(controller ? 0 : 1)
  }
})

test("storage is kept where the browser agrees, and a browser that cannot say is believed", async () => {
  const persist = vi.fn(async () => true)
  expect(await askToKeep({ persisted: async () => true, persist })).toBe(true)
  expect(persist).not.toHaveBeenCalled()
  expect(await askToKeep({ persisted: async () => false, persist })).toBe(true)
  expect(await askToKeep({ persist: async () => false })).toBe(false)
  expect(await askToKeep(undefined)).toBe(true)
  expect(await freeBytes({ estimate: async () => ({ quota: 90, usage: 100 }) })).toBe(0)
  expect(await freeBytes({})).toBeNull()
})

const wordsOf = (notices: readonly { words: string }[]) => notices.map(({ words }) => words).join(" ")

test("little room is a warning as the page starts; room enough is not spoken of", async () => {
  for (const [free, warned] of [[fewBytes - 1, true] as const, [fewBytes, false] as const]) {
    const watch = new OfflineWatch({ estimate: async () => ({ quota: free + 7, usage: 7 }) })
    await watch.lookAtStorage(false)
    expect(/little room/.test(wordsOf(watch.notices("start")))).toBe(warned)
  }
})

test("jobs that the browser may clear are spoken of once they have been looked for, and not before", async () => {
  const inner = createMadeUpSession({ ...restingView, phase: "loading" })
  const watch = new OfflineWatch({ persisted: async () => false })
  const told = whenLoaded(inner).then(({ jobs }) => watch.lookAtStorage(jobs.length > 0))
  inner.show({ ...restingView, phase: "loading" })
  await Promise.resolve()
  expect(watch.notices("start")).toEqual([])
  const day = "2026-03-02T09:00:00Z"
  const job = { job: "1", place: "The village hall", openedAt: day, lastAt: day, lines: 2, inHand: false }
  inner.show({ ...restingView, jobs: [job] })
  await told
  expect(wordsOf(watch.notices("start"))).toMatch(/may clear/)
})

test("the first job asks the browser to keep it; a refusal is told on the start page alone and can be closed", async () => {
  const persist = vi.fn(async () => false)
  const watch = new OfflineWatch({ persisted: async () => false, persist })
  const inner = createMadeUpSession(restingView)
  const session = createWatchedSession(inner, watch)
  await watch.lookAtStorage(session.snapshot().jobs.length > 0)
  expect(session.snapshot()).toBe(restingView)
  const changed = vi.fn()
  session.subscribe(changed)
  session.newJob("The village hall")
  session.newJob("The bakery")
  await vi.waitFor(() => expect(changed).toHaveBeenCalled())
  expect(persist).toHaveBeenCalledTimes(1)
  expect(inner.asked).toEqual([
    ["newJob", "The village hall"],
    ["newJob", "The bakery"],
  ])
  expect(wordsOf(session.snapshot().notices)).toMatch(/may clear .* Keep a job file/)
  expect(session.snapshot()).toBe(session.snapshot())
  inner.show({ ...restingView, phase: "job" })
  expect(session.snapshot().notices).toEqual([])
  watch.newerReady()
  expect(wordsOf(session.snapshot().notices)).toBe(
    "A newer version is ready; it is used once every window of this app is closed and it is opened again.",
  )
  inner.show(restingView)
  for (const { id } of session.snapshot().notices) session.dismiss(id)
  session.dismiss("the session's own")
  expect(session.snapshot().notices).toEqual([])
  expect(inner.asked.at(-1)).toEqual(["dismiss", "the session's own"])
})
