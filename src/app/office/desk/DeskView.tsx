/** The desk with a job on it. It keeps which row is in hand and what is open; the record itself is the store's. */
import { useCallback, useRef, useState } from "react"
import type { Outcome } from "../../../facts/Outcome"
import { Mark } from "../../parts/Mark"
import { type Panel, panelsOf } from "./changeOf"
import { type DeskDialog, DeskHead } from "./DeskHead"
import { type DeskAct, useDeskKeys } from "./deskKeys"
import { FilesDialog } from "./FilesDialog"
import { KeysDialog } from "./KeysDialog"
import { PointDetail } from "./PointDetail"
import { PointList, rowId } from "./PointList"
import { PrintSheet } from "./PrintSheet"
import type { JobReviewProps } from "./ReviewProps"
import { SignDialog } from "./SignDialog"
import { TrustDialog } from "./TrustDialog"
import { type DeskWork, useDeskWork } from "./useDeskWork"
import { type Points, usePoints } from "./usePoints"
import type { DeskJob, OnDesk } from "./useReviewedJob"

type ViewProps = JobReviewProps & { desk: DeskJob; found: OnDesk }

const panelActs: readonly string[] = ["value", "sentence", "keep", "withdraw", "strike"]
const dialogActs: readonly string[] = ["sign", "files", "keys"]

/** Which row, side, panel and dialog are open, and where the focus goes when one of them closes. */
const usePlaces = ({ point, choose, beside }: Points, leave: () => void) => {
  const [panel, setPanel] = useState<Panel | null>(null)
  const [dialog, setDialog] = useState<DeskDialog | null>(null)
  const [side, setSide] = useState<"list" | "detail">("list")
  const head = useRef<HTMLHeadingElement>(null)
  const focusRow = (key: string | null) => {
    const row = key === null ? null : document.getElementById(rowId(key))
    // On a narrow page the list may be hidden, and then cannot take the focus.
    if (row && row.getClientRects().length > 0) row.focus()
    else head.current?.focus()
  }
  // What was in hand may have another key once it is put right, so the focus goes by the latest drawing.
  const inHand = useRef<string | null>(null)
  inHand.current = point?.key ?? null
  // One move of the focus at most is on its way: a key pressed meanwhile must not find it taken away again.
  const onItsWay = useRef<number | undefined>(undefined)
  const stay = () => window.clearTimeout(onItsWay.current)
  const later = (act: () => void) => {
    stay()
    onItsWay.current = window.setTimeout(act, 0)
  }
  const closePanel = () => {
    setPanel(null)
    later(() => focusRow(inHand.current))
  }
  const move = (key: string | null) => {
    if (key === null) return
    choose(key)
    stay()
    // At once, so that keys pressed one upon the other each move one row.
    focusRow(key)
  }
  const open = (key: string) => {
    choose(key)
    if (key !== point?.key) setPanel(null)
    setSide("detail")
    later(() => head.current?.focus())
  }
  const back = () => {
    const { activeElement } = document
    if (panel) return closePanel()
    if (activeElement?.closest(".points") || (side === "list" && activeElement === document.body)) return leave()
    setSide("list")
    later(() => focusRow(inHand.current))
  }
  const show = (wanted: Panel | null) => {
    if (wanted === null) return closePanel()
    stay()
    setPanel(wanted)
    setSide("detail")
  }
  return { panel, show, closePanel, dialog, setDialog, side, head, move, open, back, beside }
}

type Places = ReturnType<typeof usePlaces>

const carryOut = (act: DeskAct, places: Places, { point }: Points, work: DeskWork): boolean => {
  const { panel, dialog, setDialog, move, beside, back, show } = places
  if (dialog) return false
  if (act === "back") back()
  else if (panel !== null) return false
  else if (act === "next") move(beside(1))
  else if (act === "previous") move(beside(-1))
  else if (act === "first") move(beside(Number.NEGATIVE_INFINITY))
  else if (dialogActs.includes(act)) setDialog(act as DeskDialog)
  else if (!point) return false
  else if (act === "accept" && point.held?.accepted === null)
    void work.change({ do: "accept", entry: point.held.entry }, "")
  else if (act === "play") document.querySelector<HTMLElement>(".desk-detail .play-sound")?.click()
  else if (panelActs.includes(act) && panelsOf(point).includes(act as Panel)) show(act as Panel)
  else return false
  return true
}

const Dialogs = ({ places, work, found }: { places: Places; work: DeskWork; found: OnDesk }) => {
  const { dialog, setDialog } = places
  const { job, sources } = found
  const close = () => setDialog(null)
  if (dialog === "keys") return <KeysDialog close={close} />
  if (dialog === "files") return <FilesDialog job={job} close={close} />
  if (dialog === "trust") return <TrustDialog trust={job.trust} sources={sources} close={close} />
  if (dialog !== "sign") return null
  const reopen = (reason: string) => work.change({ do: "reopen" }, reason)
  return <SignDialog job={job} sign={work.sign} reopen={reopen} close={close} />
}

export const DeskView = (props: ViewProps) => {
  const { desk, found, tools, sound } = props
  const { job } = found
  const id = props.job
  const soundOf = useCallback((heard: string) => sound.of({ job: id, heard }), [sound, id])
  const points = usePoints(job)
  const work = useDeskWork(job, desk, props)
  const places = usePlaces(points, props.back)
  useDeskKeys((act) => carryOut(act, places, points, work))
  const { point } = points
  const closing = async (outcome: Promise<Outcome>): Promise<Outcome> => {
    const settled = await outcome
    if (settled.ok) places.closePanel()
    return settled
  }
  return (
    <>
      <div className="desk" data-side={places.side}>
        <DeskHead job={job} open={places.setDialog} back={props.back} />
        <p className="desk-said" role="status">
          {work.said && <Mark shape="note" />} {work.said}
        </p>
        <main className="desk-columns">
          <PointList points={points.points} chosen={point?.key ?? null} choose={points.choose} open={places.open} />
          <div className="desk-detail">
            <button type="button" className="small-button to-list" onClick={places.back}>
              Back to the list
            </button>
            {point ? (
              <PointDetail
                key={point.key}
                point={point}
                job={job}
                panel={places.panel}
                setPanel={places.show}
                tools={work.tools}
                check={tools.check}
                interpret={tools.interpret}
                soundOf={soundOf}
                save={(change, reason) => closing(work.change(change, reason))}
                strike={(stretches) => closing(work.strike(stretches))}
                accept={() => point.held && void work.change({ do: "accept", entry: point.held.entry }, "")}
                head={places.head}
              />
            ) : (
              <p>Nothing is on record yet.</p>
            )}
          </div>
        </main>
        <Dialogs places={places} work={work} found={found} />
      </div>
      <PrintSheet job={job} />
    </>
  )
}
