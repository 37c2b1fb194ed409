/** The jobs stored on this device, newest first, to be worked through at the desk. */
import { Brand } from "../parts/Brand"
import { showMoment } from "../parts/showMoment"
import { useOpened } from "../parts/useOpened"
import type { Desk } from "./Desk"
import { officeHash } from "./officePlace"

const Jobs = ({ desk }: { desk: Desk }) => {
  const jobs = useOpened(() => desk.store.jobs())
  if (jobs === null) return <p role="status">Looking for jobs on this device.</p>
  if (jobs === "failed") return <p role="alert">The stored jobs could not be read. Load the page again.</p>
  if (jobs.length === 0) return <p>No job is stored on this device yet.</p>
  return (
    <ul className="job-list">
      {jobs.map(({ job, place, lastAt }) => (
        <li key={job}>
          <a className="button" href={officeHash(job)}>
            <span className="job-place">{place}</span>
            <span className="quiet">last line {showMoment(lastAt)}</span>
          </a>
        </li>
      ))}
    </ul>
  )
}

export const JobChoice = ({ desk }: { desk: Desk }) => (
  <main className="start">
    <header className="start-head">
      <Brand />
      <div>
        <h1>Office</h1>
        <p>Work through a job, put it right, sign it.</p>
      </div>
    </header>
    <a className="button" href="./">
      To the start page
    </a>
    <section aria-labelledby="jobs-head">
      <h2 id="jobs-head">Jobs on this device</h2>
      <Jobs desk={desk} />
    </section>
  </main>
)
