/** Files to save, or to hand to another app where the browser can. */
import { useState } from "react"
import type { ReviewedJob } from "../../../review/ReviewedJob"
import { Icon } from "../../parts/Icon"
import { canShareFiles, type Shared, Sharing } from "../../Sharing"
import { saveFile } from "../../saveText"
import { type DeskFile, deskFiles, makeFile } from "./deskFiles"
import { Modal } from "./Modal"

interface FilesProps {
  job: ReviewedJob
  close: () => void
}

interface RowProps {
  file: DeskFile
  job: ReviewedJob
  sharing: Sharing
  tell: (words: string) => void
}

const sayShared: Record<Shared, string> = {
  shared: "handed over.",
  // Shutting the share sheet is an answer, not a fault.
  closed: "not handed over.",
  "press again": "ready. Press Share once more.",
  refused: "this browser does not hand it over. Save it instead.",
}

const Row = ({ file, job, sharing, tell }: RowProps) => {
  const failed = () => tell(`${file.name} could not be made on this device.`)
  const save = () =>
    void makeFile(file, job)
      .then(saveFile)
      .then(() => tell(`${file.name}: saved.`), failed)
  const key = `${file.ending} ${job.record.job} ${job.record.nextSeq}`
  const share = () =>
    void sharing
      .share(key, () => makeFile(file, job))
      .then((shared) => tell(`${file.name}: ${sayShared[shared]}`), failed)
  return (
    <li className="file-row">
      <span>
        <strong>{file.name}</strong> <span className="quiet">{file.words}</span>
      </span>
      <span className="file-ways">
        <button type="button" onClick={save}>
          <Icon name="file" />
          <span>
            Save<span className="unseen"> {file.name}</span>
          </span>
        </button>
        {canShareFiles() && (
          <button type="button" onClick={share}>
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
  const [sharing] = useState(() => new Sharing())
  return (
    <Modal title="Files" close={close}>
      <ul className="files">
        {deskFiles.map((file) => (
          <Row key={file.ending} file={file} job={job} sharing={sharing} tell={setTold} />
        ))}
      </ul>
      <p role="status">{told}</p>
      <p className="quiet">Files hold all that was said. Struck words are in none of them.</p>
    </Modal>
  )
}
