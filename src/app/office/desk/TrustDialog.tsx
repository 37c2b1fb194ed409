/** How far the log can be relied on, in a badge, and in full with the files it came from. */
import type { Source } from "../../../record/Source"
import type { Trust } from "../../../review/trust"
import { type Shape, State } from "../../parts/Mark"
import { showMoment } from "../../parts/showMoment"
import { Modal } from "./Modal"

const states: Record<Trust["state"], { shape: Shape; words: string }> = {
  whole: { shape: "yes", words: "Whole" },
  lost: { shape: "warn", words: "Lines lost" },
  cut: { shape: "warn", words: "Cut" },
  changed: { shape: "stop", words: "Changed" },
}

export const TrustMark = ({ trust }: { trust: Trust }) => <State {...states[trust.state]} />

const From = ({ source }: { source: Source }) => (
  <li>
    <strong>{source.file}</strong>{" "}
    <span className="quiet">
      {source.kind}, {source.lines} new lines, taken in {showMoment(source.at)}
    </span>
    <p>{source.faults.length === 0 ? "Whole and untouched." : source.faults.join(" ")}</p>
  </li>
)

interface TrustProps {
  trust: Trust
  sources: readonly Source[]
  close: () => void
}

export const TrustDialog = ({ trust, sources, close }: TrustProps) => (
  <Modal title="The log" close={close}>
    <p>
      <TrustMark trust={trust} /> {trust.lines} lines saved.
      {trust.struck > 0 && ` Words were struck from ${trust.struck} of the sentences; the chain goes on past them.`}
    </p>
    {trust.faults.length > 0 && (
      <ul className="trust-faults">
        {trust.faults.map((fault) => (
          <li key={fault}>{fault}</li>
        ))}
      </ul>
    )}
    {sources.length === 0 ? (
      <p>Recorded on this device.</p>
    ) : (
      <ul className="trust-sources">
        {sources.map((source) => (
          <From key={source.id} source={source} />
        ))}
      </ul>
    )}
    <p>
      The chain of hashes ends in <code className="chain-end">{trust.end}</code>
    </p>
    <p className="quiet">
      A line that was changed or taken out breaks the chain. Whoever writes the whole file anew can make a new chain, so
      compare its end with one that was noted elsewhere.
    </p>
  </Modal>
)
