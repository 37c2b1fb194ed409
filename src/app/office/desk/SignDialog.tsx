/** Signing: what stands in the way, what is open and will be written down, who signs, and what was signed before. */
import { useState } from "react"
import type { Outcome } from "../../../facts/Outcome"
import type { JobRecord, Signature } from "../../../record/JobRecord"
import type { ReviewedJob } from "../../../review/ReviewedJob"
import { openStops, openWords, type SigningRole, signingRoles } from "../../../review/signing"
import { findPack } from "../../../rules/packs"
import { State } from "../../parts/Mark"
import { showMoment } from "../../parts/showMoment"
import { FindingCard } from "./FindingCard"
import { Modal } from "./Modal"

interface SignProps {
  job: ReviewedJob
  sign: (role: SigningRole, name: string) => Promise<Outcome>
  reopen: (reason: string) => Promise<Outcome>
  close: () => void
}

export const roleWords: Record<string, string> = { worker: "did the work", reviewer: "looked it over" }

export const signatureWords = ({ role, name, at }: Signature): string =>
  `${name ?? "No name given"}, ${roleWords[role] ?? role}, ${showMoment(at)}`

const Open = ({ job }: { job: ReviewedJob }) => {
  const open = openWords(job)
  return (
    <section className="open-list" aria-labelledby="open-head">
      {openStops(job).map((finding) => (
        <FindingCard key={`${finding.rule}|${finding.item}`} finding={finding} reason={null} />
      ))}
      <h3 id="open-head">Will be written down as open</h3>
      {open.length === 0 && <p>Nothing.</p>}
      <ul>
        {open.map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
    </section>
  )
}

const Signed = ({ record }: { record: JobRecord }) => (
  <ul className="signatures">
    {record.signatures.map((one) => (
      <li key={one.role}>
        <State shape="yes" words="Signed" /> {signatureWords(one)}
      </li>
    ))}
    {record.reopenings.map(({ at, because, signatures }) => (
      <li key={at}>
        <State shape="gone" words="Opened again" /> {showMoment(at)}. {because} Before:{" "}
        {signatures.map(signatureWords).join("; ")}.
      </li>
    ))}
  </ul>
)

const Edition = ({ pack: id }: { pack: string }) => (
  <p className="quiet">
    A signature says who takes this record on. The checks are advice from {findPack(id)?.edition ?? id}, as published:
    check the edition in force, local rules and the network operator. The competent person decides.
  </p>
)

const Reopen = ({ reopen }: Pick<SignProps, "reopen">) => {
  const [reason, setReason] = useState("")
  const [refused, setRefused] = useState("")
  return (
    <form
      className="desk-panel"
      onSubmit={(event) => {
        event.preventDefault()
        void reopen(reason).then((outcome) => setRefused(outcome.ok ? "" : outcome.because))
      }}
    >
      <label htmlFor="reopen-reason">Open it again, because</label>
      <input
        id="reopen-reason"
        value={reason}
        maxLength={500}
        required
        autoComplete="off"
        onChange={(event) => setReason(event.target.value)}
      />
      <p className="refused" role="alert">
        {refused}
      </p>
      <button type="submit">Open again</button>
    </form>
  )
}

const SignForm = ({ job, sign }: Pick<SignProps, "job" | "sign">) => {
  const signed = job.record.signatures.map((one) => one.role)
  const [role, setRole] = useState<SigningRole>(signed.includes("worker") ? "reviewer" : "worker")
  const [name, setName] = useState("")
  const [refused, setRefused] = useState("")
  return (
    <form
      className="desk-panel"
      onSubmit={(event) => {
        event.preventDefault()
        void sign(role, name).then((outcome) => setRefused(outcome.ok ? "" : outcome.because))
      }}
    >
      <fieldset className="roles">
        <legend>Who signs</legend>
        {signingRoles.map((one) => (
          <label key={one} className="role-choice">
            <input type="radio" name="role" checked={role === one} onChange={() => setRole(one)} />
            <span>The person who {roleWords[one]}</span>
          </label>
        ))}
      </fieldset>
      <label htmlFor="sign-name">Name (may stay empty)</label>
      <input
        id="sign-name"
        value={name}
        maxLength={120}
        autoComplete="name"
        onChange={(event) => setName(event.target.value)}
      />
      <p className="refused" role="alert">
        {refused}
      </p>
      <button type="submit" className="main-button">
        Sign
      </button>
    </form>
  )
}

export const SignDialog = ({ job, sign, reopen, close }: SignProps) => {
  const stops = openStops(job)
  return (
    <Modal title="Sign" close={close}>
      <Signed record={job.record} />
      <Open job={job} />
      {stops.length > 0 ? (
        <p className="refused">A stop stands open. Put it right, or keep it with a reason; then it can be signed.</p>
      ) : (
        <SignForm job={job} sign={sign} />
      )}
      {job.record.signatures.length > 0 && <Reopen reopen={reopen} />}
      <Edition pack={job.record.pack} />
    </Modal>
  )
}
