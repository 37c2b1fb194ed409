/** A store that forgets, with a practice job in it whose supply is known, so that a small bond sets off a warning. */
import type { RecordedFact } from "../../facts/Fact"
import type { Draft } from "../../record/LogLine"
import { createMemoryStore } from "../../record/memoryStore"
import type { Store } from "../../record/Store"
import { stampLine } from "../../record/stampLine"
import { followedPack } from "../followedPack"

/** The practice job's name. */
export const practiceJob = "practice"

const supply: readonly RecordedFact[] = [
  { kind: "earthing_arrangement", value: "TN-C-S" },
  { kind: "neutral_csa", value: 25, unit: "mm2" },
]

/** `at`: local time now, ISO 8601 with its offset. */
export const createLessonStore = async (at: string): Promise<Store> => {
  const store = createMemoryStore()
  const drafts: Draft[] = [
    { type: "job_opened", place: "Practice", pack: followedPack.id, caution: "" },
    ...supply.map((fact): Draft => {
      return { type: "entry", fact, origin: { by: "hand", reason: "given for practice" }, needsYes: false }
    }),
  ]
  const lines = drafts.map((draft, seq) =>
    stampLine(draft, { id: `practice-${seq}`, job: practiceJob, at, by: "app", device: "practice", seq }),
  )
  await store.append(lines)
  return store
}
