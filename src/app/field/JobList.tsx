/** Jobs stored on this device, newest first, to take up again. */
import type { JobSummary } from "../../record/Store"
import { showMoment } from "../parts/showMoment"

export const JobList = ({ jobs, resume }: { jobs: readonly JobSummary[]; resume: (job: string) => void }) => {
  if (jobs.length === 0) return null
  return (
    <section aria-labelledby="jobs-head">
      <h2 id="jobs-head">Jobs on this device</h2>
      <ul className="job-list">
        {jobs.map(({ job, place, lastAt }) => (
          <li key={job}>
            <button type="button" onClick={() => resume(job)}>
              <span className="job-place">{place}</span>
              <span className="quiet">last entry {showMoment(lastAt)}</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  )
}
