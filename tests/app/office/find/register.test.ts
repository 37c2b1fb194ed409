/** The register of thousands of jobs: the newest can be looked at while the others are still being read. */
import { expect, test, vi } from "vitest"
import { registerOf } from "../../../../src/app/office/find/Register"
import { createMemoryStore } from "../../../../src/record/memoryStore"
import { opened, stampLines } from "../../../record/someLines"

const now = "2026-03-04T09:00:00+00:00"

test("the newest jobs stand, with the count of all, before the others have been read", async () => {
  const store = createMemoryStore()
  for (let number = 0; number < 100; number++) {
    const at = new Date(Date.UTC(2026, 0, 1 + number)).toISOString()
    await store.append(stampLines([opened], `job ${number}`).map((line) => ({ ...line, at, id: `${number}` })))
  }
  let goOn = () => {}
  const waits = new Promise<void>((fulfil) => {
    goOn = fulfil
  })
  const slow = { ...store, rows: () => waits.then(() => store.rows()) }
  const register = registerOf(slow)
  const reading = register.refresh()
  await vi.waitFor(() => expect(register.snapshot().phase).toBe("ready"))
  expect(register.snapshot().unread).toBe(40)
  expect(register.search("", "newest", now).rows[0]?.job).toBe("job 99")
  expect(register.search("", "newest", now).rows).toHaveLength(60)
  goOn()
  await reading
  expect(register.snapshot().unread).toBe(0)
  expect(register.search("", "newest", now).rows).toHaveLength(100)
  expect(register.search("", "oldest", now).rows[0]?.job).toBe("job 0")
})
