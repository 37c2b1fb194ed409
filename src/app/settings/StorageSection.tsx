/** What is stored on this device, how much room is left, and the ways to keep a copy. Nothing is ever deleted here. */
import { useEffect, useState } from "react"
import { freeBytes, isKept } from "../offline/storageCare"
import { Icon } from "../parts/Icon"
import { showBytes } from "../parts/showBytes"
import type { Session, SessionView } from "../Session"

interface Room {
  used: number | null
  free: number | null
  kept: boolean
}

const lookAtRoom = async (): Promise<Room> => {
  const { storage } = navigator
  const told = await storage?.estimate?.().catch(() => undefined)
  return { used: told?.usage ?? null, free: await freeBytes(storage), kept: await isKept(storage) }
}

const useRoom = (jobs: number): Room | null => {
  const [room, setRoom] = useState<Room | null>(null)
  // Looked at again when a job has come, since that is what takes up room.
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above
  useEffect(() => {
    void lookAtRoom().then(setRoom)
  }, [jobs])
  return room
}

export const StorageSection = ({ view, session }: { view: SessionView; session: Session }) => {
  const room = useRoom(view.jobs.length)
  return (
    <section aria-labelledby="storage-head">
      <h3 id="storage-head">On this device</h3>
      <dl className="facts">
        <dt>Jobs</dt>
        <dd>{view.jobs.length}</dd>
        <dt>Used, with the ear and the voice</dt>
        <dd>{room?.used == null ? "the browser does not tell" : showBytes(room.used)}</dd>
        <dt>Free for this page</dt>
        <dd>{room?.free == null ? "the browser does not tell" : showBytes(room.free)}</dd>
        <dt>May the browser clear it?</dt>
        <dd>{room?.kept ? "No, it is kept" : "Yes, when it runs short of room"}</dd>
      </dl>
      <p className="quiet">The app deletes no job. Clearing this page’s data in the browser’s settings deletes all.</p>
      <button type="button" onClick={() => session.saveAllJobs()}>
        <Icon name="file" />
        <span>Save all jobs as one file</span>
      </button>
    </section>
  )
}
