/** The PDF report of a job as it stands, as a file. What makes it is fetched when it is wanted. */
import type { DialogueState } from "../dialogue/DialogueState"
import { exportedJob } from "../exports/ExportedJob"
import type { Store } from "../record/Store"

/** Rejects where it could not be made. */
export const reportOf = async (store: Store, job: string, dialogue: DialogueState): Promise<File> => {
  const { record, checked } = dialogue
  const [{ lines, damaged }, sources] = await Promise.all([store.read(job), store.sources(job)])
  const lost = damaged > 0 ? [`${damaged} stored lines could not be read.`] : []
  const faults = [...sources.flatMap((source) => source.faults), ...lost]
  const { reportFile } = await import("./makeReport")
  return reportFile(exportedJob({ lines, record, checked, faults }))
}
