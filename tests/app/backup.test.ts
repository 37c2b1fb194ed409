/** Copies in a folder of the worker's: written soon, whole, by themselves, and never in the way of a job. */
import { expect, test } from "vitest"
import { Backup, copyAfterMs } from "../../src/app/backup/Backup"
import type { BackupFolder } from "../../src/app/backup/BackupFolder"
import { readJobFile } from "../../src/record/jobFile"
import { createMemoryStore } from "../../src/record/memoryStore"
import { createMadeUpLog } from "./madeUpLog"

/** A folder as the File System Standard (WHATWG) has it: a file changes when its writer is closed, and not before. */
const makeFolder = (name = "card") => {
  const files = new Map<string, string>()
  const state = { fails: null as string | null, permission: "granted" as PermissionState, answer: "granted", asked: 0 }
  const folder: BackupFolder = {
    name,
    getFileHandle: async (file) => ({
      createWritable: async () => {
        let text = ""
        return {
          write: async (more) => {
            text += more.slice(0, more.length / 2)
            if (state.fails) throw Object.assign(new Error(), { name: state.fails })
            text += more.slice(more.length / 2)
          },
          close: async () => void files.set(file, text),
          abort: async () => undefined,
        }
      },
    }),
    queryPermission: async () => state.permission,
    requestPermission: async () => {
      state.asked += 1
      state.permission = state.answer as PermissionState
      return state.permission
    },
  }
  return { folder, files, state }
}

const log = createMadeUpLog("The village hall")
log.speak("water ten square", [{ kind: "conductor_csa", value: 10, unit: "mm2", subject: "water" }])
log.speak("fourteen metres", [{ kind: "length", value: 14, unit: "m", subject: "water" }])
const lines = log.lines()
const job = lines[0]!.job

const bench = async (kept: BackupFolder | null = null, picked: BackupFolder | null = null) => {
  const store = createMemoryStore()
  await store.append(lines.slice(0, 4))
  const place = { handle: kept }
  const planned: { act: () => void; ms: number }[] = []
  const troubles: string[] = []
  const backup = new Backup({
    store,
    pick: picked ? async () => picked : kept ? async () => kept : null,
    place: {
      read: async () => place.handle,
      write: async (folder) => {
        place.handle = folder
      },
    },
    now: () => "2026-03-02T09:14:00+00:00",
    later: (act, ms) => void planned.push({ act, ms }),
    trouble: (because) => void troubles.push(because),
  })
  await new Promise((fulfil) => setTimeout(fulfil))
  return { backup, store, place, planned, troubles }
}

const only = (files: ReadonlyMap<string, string>) => {
  expect(files.size).toBe(1)
  const read = readJobFile([...files.values()][0]!)
  if (!read.ok) throw new Error(read.because)
  return read.value
}

test("a browser without folders says so and copies nothing", async () => {
  const { backup, planned } = await bench()
  expect(backup.snapshot().at).toBe("missing")
  backup.choose()
  backup.grew(job)
  expect(planned).toEqual([])
})

test("a folder that is chosen gets every job there is, is remembered, and gets each later line", async () => {
  const { folder, files } = makeFolder()
  const { backup, store, place, planned } = await bench(null, folder)
  expect(backup.snapshot().at).toBe("off")
  backup.choose()
  await expect.poll(() => files.size).toBe(1)
  expect(only(files).lines).toEqual(lines.slice(0, 4))
  expect(place.handle).toBe(folder)
  await store.append(lines.slice(4))
  backup.grew(job)
  backup.grew(job)
  expect(planned.map(({ ms }) => ms)).toEqual([copyAfterMs])
  await backup.write()
  expect(only(files)).toMatchObject({ lines, faults: [] })
  expect(backup.snapshot()).toMatchObject({ at: "on", folder: "card", savedAt: "2026-03-02T09:14:00+00:00" })
})

test("a folder of an earlier visit is asked for at a tap, and only then written to", async () => {
  const { folder, files, state } = makeFolder()
  state.permission = "prompt"
  const { backup } = await bench(folder)
  expect(backup.snapshot()).toMatchObject({ at: "asleep", folder: "card" })
  backup.grew(job)
  await backup.write()
  expect([files.size, state.asked]).toEqual([0, 0])
  backup.wake()
  await expect.poll(() => files.size).toBe(1)
  expect([state.asked, backup.snapshot().at]).toEqual([1, "on"])
})

test("a permission that is refused stays refused until the next tap", async () => {
  const { folder, files, state } = makeFolder()
  Object.assign(state, { permission: "prompt", answer: "denied" })
  const { backup } = await bench(folder)
  backup.wake()
  await expect.poll(() => state.asked).toBe(1)
  expect([backup.snapshot().at, files.size]).toEqual(["asleep", 0])
})

test.each([
  ["QuotaExceededError", "its disk is full"],
  ["NotAllowedError", "the browser no longer allows it"],
  ["NotFoundError", "the folder is not there any more"],
  ["TypeError", "the folder did not take it"],
])("a copy that fails with %s is one plain notice, spoils no older copy, and is tried again", async (name, why) => {
  const { folder, files, state } = makeFolder()
  const { backup, store, troubles } = await bench(folder)
  backup.grew(job)
  await backup.write()
  state.fails = name
  await store.append(lines.slice(4))
  for (let again = 0; again < 3; again++) {
    backup.grew(job)
    await backup.write()
  }
  expect(troubles).toEqual([expect.stringContaining(`could not be written: ${why}.`)])
  expect(backup.snapshot()).toMatchObject({ at: "failed", because: why })
  expect(only(files)).toMatchObject({ lines: lines.slice(0, 4), faults: [] })
  state.fails = null
  backup.grew(job)
  await backup.write()
  expect(only(files).lines).toEqual(lines)
  expect(backup.snapshot()).toMatchObject({ at: "on", because: "" })
})

test("stopped, it forgets the folder and writes no more", async () => {
  const { folder, files } = makeFolder()
  const { backup, place } = await bench(folder)
  backup.stop()
  backup.grew(job)
  await backup.write()
  expect([place.handle, files.size, backup.snapshot().at]).toEqual([null, 0, "off"])
})
