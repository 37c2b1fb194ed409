/** The jobs to be spoken, as text: understood word for word, the loop gives the record that was written down by hand. */
import { expect, test } from "vitest"
import { recordOf } from "../recordOf"
import { readSpokenJobs, runSpokenJob } from "./SpokenJob"

test.each(readSpokenJobs())("%s gives its record when every word is understood", (_, job) => {
  const { lines } = runSpokenJob(job)
  expect(
    recordOf(lines)
      .map((line) => line.replace(/, \w+$/, ""))
      .sort(),
  ).toEqual([...job.record].sort())
  expect(lines.flatMap((line) => (line.type === "kept" ? [line.reason] : []))).toEqual(job.kept)
  expect(lines.some((line) => line.type === "signed_off")).toBe(job.signed)
})
