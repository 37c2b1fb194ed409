/** Open warnings. They stand above everything else until put right or kept on purpose. */
import { useEffect, useRef } from "react"
import type { DialogueState } from "../../dialogue/DialogueState"
import type { Finding } from "../../facts/Finding"
import { openWarnings, warningKey } from "../../record/warningKey"
import type { Session } from "../Session"
import { WarningCard } from "./WarningCard"

interface WarningsProps {
  dialogue: DialogueState
  session: Session
  open: (entry: string) => void
  /** Tells two lists on one page apart. */
  among?: string
}

/** Brings the first warning into sight when it is a new one, wherever the page was scrolled to. */
const useInSight = (key: string | undefined) => {
  const place = useRef<HTMLElement>(null)
  useEffect(() => {
    if (key !== undefined) place.current?.querySelector("summary")?.scrollIntoView({ block: "nearest" })
  }, [key])
  return place
}

/** The worst first; among equals the one that was spoken last, since that is what an answer is taken to be about. */
export const worstFirst = ({ record, checked }: DialogueState): Finding[] => {
  const spoken = (finding: Finding) => record.warnings.findIndex((one) => one.warning === warningKey(finding))
  const stops = (finding: Finding) => Number(finding.severity === "stop")
  return openWarnings(record, checked.findings).sort((a, b) => stops(b) - stops(a) || spoken(b) - spoken(a))
}

export const Warnings = ({ dialogue, session, open, among = "now" }: WarningsProps) => {
  const found = worstFirst(dialogue)
  const place = useInSight(found[0] && warningKey(found[0]))
  if (found.length === 0) return null
  return (
    <section className="warnings" ref={place} aria-labelledby={`warnings-${among}`}>
      <h2 id={`warnings-${among}`} className="unseen">
        Open warnings
      </h2>
      {found.map((finding, index) => (
        <WarningCard
          key={`${warningKey(finding)}|${finding.which ?? ""}`}
          finding={finding}
          among={among}
          record={dialogue.record}
          first={index === 0}
          keep={(reason) =>
            session.send({ type: "tapped", act: { kind: "keep_it", reason }, about: warningKey(finding) })
          }
          open={open}
        />
      ))}
    </section>
  )
}
