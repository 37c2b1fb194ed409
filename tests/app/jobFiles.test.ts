// @vitest-environment happy-dom
/** All jobs as one zip file: read by another reader of the format, and taken in again line by line. */
import { inflateRawSync } from "node:zlib"
import { afterEach, expect, test, vi } from "vitest"
import { jobFileName, saveAll, takeInFile } from "../../src/app/jobFiles"
import { writeJobFile } from "../../src/record/jobFile"
import { createMemoryStore } from "../../src/record/memoryStore"
import { opened, stampLines, waterReading, waterSize } from "../record/someLines"

afterEach(() => vi.restoreAllMocks())

const at = "2026-03-03T08:00:00Z"

/** The bytes that a saving would have handed to the browser. */
const catchDownload = () => {
  const caught: Blob[] = []
  vi.spyOn(URL, "createObjectURL").mockImplementation((blob) => {
    caught.push(blob as Blob)
    return "blob:caught"
  })
  vi.spyOn(HTMLAnchorElement.prototype, "click").mockImplementation(() => {})
  return async () => new Uint8Array(await caught.at(-1)!.arrayBuffer())
}

const storeWith = async (...jobs: string[]) => {
  const store = createMemoryStore()
  for (const job of jobs) await store.append(stampLines([opened, waterSize(10), waterReading(0.05)], job))
  return store
}

test("every job is in the zip file under a name of its own, and comes back whole", async () => {
  const download = catchDownload()
  const store = await storeWith("job-a", "job-b")
  expect(await saveAll(store, "2026-03-02")).toEqual({ ok: true, value: 2 })
  const bytes = await download()
  const other = createMemoryStore()
  const taken = await takeInFile(other, new File([bytes], "jobs.zip"), at)
  expect(taken.map((one) => one.ok)).toEqual([true, true])
  for (const job of ["job-a", "job-b"]) expect(await other.read(job)).toEqual(await store.read(job))
})

/** A reader of zip files of its own, after PKWARE's APPNOTE.TXT 4.3.12 and 4.3.7: names and contents by the directory. */
const readZip = (bytes: Uint8Array): Record<string, string> => {
  const buffer = Buffer.from(bytes)
  const files: Record<string, string> = {}
  let at = buffer.readUInt32LE(buffer.lastIndexOf("PK\x05\x06", undefined, "latin1") + 16)
  while (buffer.readUInt32LE(at) === 0x02014b50) {
    const [packed, nameLength, extra, comment] = [
      buffer.readUInt32LE(at + 20),
      ...[28, 30, 32].map((n) => buffer.readUInt16LE(at + n)),
    ]
    const local = buffer.readUInt32LE(at + 42)
    const from = local + 30 + buffer.readUInt16LE(local + 26) + buffer.readUInt16LE(local + 28)
    const content = buffer.subarray(from, from + packed!)
    const name = buffer.toString("utf8", at + 46, at + 46 + nameLength!)
    files[name] = (buffer.readUInt16LE(at + 10) === 8 ? inflateRawSync(content) : content).toString("utf8")
    at += 46 + nameLength! + extra! + comment!
  }
  return files
}

test("another reader of zip files finds the same files in it", async () => {
  const download = catchDownload()
  const store = await storeWith("job-a", "job-b")
  await saveAll(store, "2026-03-02")
  const files = readZip(await download())
  const jobs = await store.jobs()
  expect(Object.keys(files).sort()).toEqual(jobs.map(jobFileName).sort())
  const text = files[jobFileName(jobs[0]!)]!
  expect(JSON.parse(text.split("\n")[0]!)).toMatchObject({ format: "bothhands job", job: jobs[0]!.job })
})

test("with nothing stored nothing is saved, and a broken zip file is refused in plain words", async () => {
  expect((await saveAll(createMemoryStore(), "2026-03-02")).ok).toBe(false)
  const broken = new File([new Uint8Array([0x50, 0x4b, 1, 2, 3])], "jobs.zip")
  expect(await takeInFile(createMemoryStore(), broken, at)).toEqual([
    { ok: false, words: "jobs.zip: The zip file could not be opened." },
  ])
})

test("a place with strokes and accents makes a name that every file system takes", () => {
  const name = jobFileName({ job: "j1", place: "../Café / Müller's: the *hall*?", openedAt: "2026-03-02T09:00:00Z" })
  expect(name).toMatch(/^2026-03-02-[A-Za-z0-9-]+-j1\.bothhands\.jsonl$/)
})

test("a job that another device carried on with stands beside the other, and nothing is overwritten", async () => {
  const lines = stampLines([opened, waterSize(10), waterReading(0.05)], "job-a")
  const fork = writeJobFile([...lines.slice(0, 2), { ...stampLines([waterSize(16)], "job-a", 2)[0]!, id: "phone-2" }])
  const store = createMemoryStore()
  await store.append(lines)
  const [taken] = await takeInFile(store, new File([fork], "fork.bothhands.jsonl"), at)
  expect(taken).toMatchObject({ ok: true, words: expect.stringContaining("as a second copy") })
  expect((await store.read("job-a")).lines).toEqual(lines)
  expect(await store.jobs()).toHaveLength(2)
})
