/** Rows for tests of finding: small invented jobs at the bakery and the village hall. */
import type { JobRow } from "../../src/record/JobRow"
import { nothingFound } from "../../src/record/RowMaker"

const plain: JobRow = {
  job: "bakery",
  place: "The bakery with the flat above",
  openedAt: "2026-03-02T09:00:00+00:00",
  lastAt: "2026-03-02T11:00:00+00:00",
  lines: 40,
  inHand: false,
  ...nothingFound,
}

/** A row with only what matters to the test. */
export const rowWith = (change: Partial<JobRow> = {}): JobRow => ({ ...plain, ...change })
