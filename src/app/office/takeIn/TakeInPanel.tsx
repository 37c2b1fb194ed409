/** Taking files in: two buttons, the whole page as a place to drop them, how far it is, and what became of each. */
import { type ChangeEvent, useEffect, useState, useSyncExternalStore } from "react"
import { Icon } from "../../parts/Icon"
import { filesDropped, filesPicked } from "./filesOf"
import type { TakeIn, TakeInView } from "./TakeIn"
import { sumUp, TakenList } from "./TakenList"
import "./takeIn.css"

const canPickFolders = () => "webkitdirectory" in HTMLInputElement.prototype

/** Files may be dropped anywhere. The page would otherwise go away and show the file. */
const useDrop = (takeIn: TakeIn) => {
  const [isOver, setIsOver] = useState(false)
  useEffect(() => {
    const hasFiles = (event: DragEvent) => event.dataTransfer?.types.includes("Files") ?? false
    const over = (event: DragEvent) => {
      if (!hasFiles(event)) return
      event.preventDefault()
      setIsOver(true)
    }
    const leave = (event: DragEvent) => {
      if (event.relatedTarget === null) setIsOver(false)
    }
    const drop = (event: DragEvent) => {
      if (!event.dataTransfer || !hasFiles(event)) return
      event.preventDefault()
      setIsOver(false)
      void filesDropped(event.dataTransfer).then((files) => takeIn.add(files))
    }
    const { body } = document
    body.addEventListener("dragover", over)
    body.addEventListener("dragleave", leave)
    body.addEventListener("drop", drop)
    return () => {
      body.removeEventListener("dragover", over)
      body.removeEventListener("dragleave", leave)
      body.removeEventListener("drop", drop)
    }
  }, [takeIn])
  return isOver
}

const Pick = ({ takeIn, folder }: { takeIn: TakeIn; folder: boolean }) => {
  const pick = (event: ChangeEvent<HTMLInputElement>) => {
    takeIn.add(filesPicked(event.target.files))
    event.target.value = ""
  }
  return (
    <label className="button file-button">
      <Icon name="file" />
      <span>{folder ? "Take in a folder" : "Take in files"}</span>
      <input type="file" className="unseen" multiple onChange={pick} {...(folder && { webkitdirectory: "" })} />
    </label>
  )
}

const Working = ({ view, takeIn }: { view: TakeInView; takeIn: TakeIn }) => {
  const { now, waiting, taken } = view
  if (!now) return null
  return (
    <div className="take-in-now">
      <label htmlFor="take-in-part">
        Taking in {now.name}
        {now.part > 0 && `: ${Math.round(now.part * 100)} %`}
        <span className="quiet">
          {" "}
          {taken.length} done, {waiting} waiting
        </span>
      </label>
      <progress id="take-in-part" max={1} {...(now.part > 0 && { value: now.part })} />
      <button type="button" onClick={() => takeIn.stop()}>
        Stop
      </button>
    </div>
  )
}

const Stopped = ({ view, takeIn }: { view: TakeInView; takeIn: TakeIn }) => (
  <div className="take-in-now">
    <p>
      Stopped. {view.waiting} {view.waiting === 1 ? "file is" : "files are"} waiting; nothing is half taken in.
    </p>
    <button type="button" onClick={() => takeIn.goOn()}>
      Go on
    </button>
  </div>
)

export const TakeInPanel = ({ takeIn }: { takeIn: TakeIn }) => {
  const view = useSyncExternalStore(takeIn.subscribe, takeIn.snapshot)
  const isOver = useDrop(takeIn)
  return (
    <section className="take-in" aria-label="Take in files">
      <div className="take-in-ways">
        <Pick takeIn={takeIn} folder={false} />
        {canPickFolders() && <Pick takeIn={takeIn} folder />}
        <p className="quiet">Or drop them anywhere here: job files, transcripts, recordings, zip files of them.</p>
      </div>
      {isOver && <p className="take-in-drop">Let go to take these files in.</p>}
      {view.state === "working" && <Working view={view} takeIn={takeIn} />}
      {view.state === "stopped" && <Stopped view={view} takeIn={takeIn} />}
      {view.taken.length > 0 && (
        <div className="take-in-done">
          <p role="status">
            <strong>{sumUp(view.taken)}</strong>
          </p>
          <button type="button" className="small-button" onClick={() => takeIn.clear()}>
            Clear this list
          </button>
          <TakenList taken={view.taken} />
        </div>
      )}
    </section>
  )
}
