/** Files to save, or to hand to another app where the browser can. */
import { useState } from "react"
import type { ReviewedJob } from "../../../review/ReviewedJob"
import { Icon } from "../../parts/Icon"
import { saveFile } from "../../saveText"
import { type DeskFile, deskFiles, makeFile } from "./deskFiles"
import { Modal } from "./Modal"

const probe = () => new File([""], "probe.csv", { type: "text/csv" })

/** Whether this browser hands files to other apps at all. */
const canShareFiles = (): boolean =>
  typeof navigator.share === "function" && navigator.canShare?.({ files: [probe()] }) === true

interface FilesProps {
  job: ReviewedJob
  close: () => void
}

const Row = ({ file, job, tell }: { file: DeskFile; job: ReviewedJob; tell: (words: string) => void }) => {
  const send = (hand: (made: File) => void | Promise<void>, what: string) =>
    void makeFile(file, job)
      .then(hand)
      .then(
        () => tell(`${file.name}: ${what}.`),
        (error: unknown) => {
          // Closing the share sheet is an answer, not a fault.
          if ((error as Error).name !== "AbortError") tell(`${file.name} could not be made on this device.`)
        },
      )
  return (
    <li className="file-row">
      <span>
        <strong>{file.name}</strong> <span className="quiet">{file.words}</span>
      </span>
      <span className="file-ways">
        <button type="button" onClick={() => send(saveFile, "saved")}>
          <Icon name="file" />
          <span>
            Save<span className="unseen"> {file.name}</span>
          </span>
        </button>
        {canShareFiles() && (
          <button type="button" onClick={() => send((made) => navigator.share({ files: [made] }), "handed over")}>
            <Icon name="send" />
            <span>
              Share<span className="unseen"> {file.name}</span>
            </span>
          </button>
        )}
      </span>
    </li>
  )
}

export const FilesDialog = ({ job, close }: FilesProps) => {
  const [told, setTold] = useState("")
  return (
    <Modal title="Files" close={close}>
      <ul className="files">
        {deskFiles.map((file) => (
          <Row key={file.ending} file={file} job={job} tell={setTold} />
        ))}
      </ul>
      <p role="status">{told}</p>
      <p className="quiet">Files hold all that was said. Struck words are in none of them.</p>
    </Modal>
  )
}
