/**
 * A change at the desk: the new value or the sentence as it should have been heard, why, and what would come of it before
 * it is done. The preview and the change are made by the same code.
 */
import { useDeferredValue, useMemo, useState } from "react"
import type { Outcome } from "../../../facts/Outcome"
import type { Change } from "../../../review/Change"
import { type ChangeTools, draftChange } from "../../../review/draftChange"
import type { Point } from "../../../review/Point"
import { type Preview, previewChange } from "../../../review/previewChange"
import type { Check, ReviewedJob } from "../../../review/ReviewedJob"
import { ChangeField } from "../../parts/ChangeField"
import { type Draft, draftOf } from "../../parts/changeDraft"
import { changeOf, type Panel } from "./changeOf"
import { PanelForm } from "./PanelForm"
import { PreviewView } from "./PreviewView"

export interface PanelProps {
  panel: Exclude<Panel, "strike">
  point: Point
  /** The sentence as it was heard, to start from. */
  sentence: string
  job: ReviewedJob
  tools: () => ChangeTools
  check: Check
  save: (change: Change, reason: string) => Promise<Outcome>
  cancel: () => void
}

const titles: Record<PanelProps["panel"], { head: string; doIt: string }> = {
  value: { head: "A new value by hand", doIt: "Put it on record" },
  sentence: { head: "The sentence as it was said", doIt: "Put it on record" },
  withdraw: { head: "Take it back", doIt: "Take it back" },
  keep: { head: "Keep it as it is", doIt: "Keep it" },
}

/** What the change would do, or why it cannot be done. A reason is only wanted when it is done. */
const usePreview = ({ job, tools, check }: PanelProps, change: Outcome<Change>): Outcome<Preview> => {
  const asked = useDeferredValue(JSON.stringify(change))
  return useMemo(() => {
    const wanted = JSON.parse(asked) as Outcome<Change>
    if (!wanted.ok) return wanted
    const drafted = draftChange(job.record, wanted.value, "preview", tools())
    return drafted.ok ? { ok: true, value: previewChange(job, drafted.value.record, check) } : drafted
  }, [asked, job, tools, check])
}

interface FieldsProps {
  panel: PanelProps["panel"]
  point: Point
  draft: Draft | null
  setDraft: (draft: Draft) => void
  text: string
  setText: (text: string) => void
}

const Fields = ({ panel, point, draft, setDraft, text, setText }: FieldsProps) => {
  if (panel === "value" && point.held && draft)
    return <ChangeField fact={point.held.fact} draft={draft} change={setDraft} />
  if (panel !== "sentence") return null
  return (
    <>
      <label htmlFor="desk-sentence">Sentence</label>
      <input
        id="desk-sentence"
        value={text}
        maxLength={500}
        autoComplete="off"
        onChange={(event) => setText(event.target.value)}
      />
    </>
  )
}

export const ChangePanel = (props: PanelProps) => {
  const { panel, point, sentence, save, cancel } = props
  const [draft, setDraft] = useState<Draft | null>(() => (point.held ? draftOf(point.held.fact) : null))
  const [text, setText] = useState(sentence)
  const change = changeOf(panel, point, { draft, text })
  const preview = usePreview(props, change)
  const below = (
    <div aria-live="polite">
      {preview.ok ? <PreviewView preview={preview.value} /> : <p className="quiet">{preview.because}</p>}
    </div>
  )
  return (
    <PanelForm
      {...titles[panel]}
      below={below}
      submit={async (reason) => (change.ok ? save(change.value, reason) : change)}
      cancel={cancel}
    >
      <Fields panel={panel} point={point} draft={draft} setDraft={setDraft} text={text} setText={setText} />
    </PanelForm>
  )
}
