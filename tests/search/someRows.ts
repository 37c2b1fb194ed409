/** Rows for tests of finding: small invented jobs at the bakery and the village hall. */
import type { JobRow } from "../../src/record/JobRow"

const plain: JobRow = {
  job: "bakery",
  place: "The bakery with the flat above",
  openedAt: "2026-03-02T09:00:00+00:00",
  lastAt: "2026-03-02T11:00:00+00:00",
  lines: 40,
  inHand: false,
  signedOff: false,
  supply: {},
  parts: [],
  stops: 0,
  warns: 0,
  kept: 0,
  awaiting: 0,
  unseen: 0,
  words: "",
}

/** A row with only what matters to the test. */
export const rowWith = (change: Partial<JobRow> = {}): JobRow => ({ ...plain, ...change })
