/** Before a job is open: where is it, take one up again, or hear how it goes. Tapping here also wakes voice and ear. */

import { followedPack } from "../followedPack"
import { Brand } from "../parts/Brand"
import { Icon } from "../parts/Icon"
import type { Session, SessionView } from "../Session"
import { EarLoading } from "./EarLoading"
import { JobList } from "./JobList"
import { LessonCard } from "./LessonCard"
import { NewJob } from "./NewJob"
import { Notices } from "./Notices"

const Cautions = () => (
  <section className="cautions" aria-labelledby="cautions-head">
    <h2 id="cautions-head">Before you lean on it</h2>
    <p>
      What you hear is advice from the edition <strong>{followedPack.edition}</strong>, as it was published. Check the
      edition in force, local rules and the network operator. The competent person decides and signs.
    </p>
    <p>Nothing leaves this device: listening, checking and storing all happen here.</p>
  </section>
)

const OpenFile = ({ session }: { session: Session }) => (
  <label className="button file-button">
    <Icon name="file" />
    <span>Open a job file</span>
    <input
      type="file"
      className="unseen"
      onChange={(event) => {
        const file = event.target.files?.[0]
        if (file) session.openJobFile(file)
        event.target.value = ""
      }}
    />
  </label>
)

export const StartView = ({ view, session }: { view: SessionView; session: Session }) => (
  <main className="start">
    <header className="start-head">
      <Brand />
      <h1>Bothhands</h1>
      <a className="button small-button" href="#settings">
        <Icon name="settings" />
        <span>Settings</span>
      </a>
      <p>Say what you fitted and what it read. Hear it back, checked.</p>
    </header>
    <Notices view={view} session={session} />
    <EarLoading view={view} />
    <NewJob session={session} />
    <LessonCard session={session} />
    <div className="start-more">
      <button type="button" onClick={() => session.hearSample()}>
        <Icon name="play" />
        <span>Hear a sample job</span>
      </button>
      <OpenFile session={session} />
      <a className="button" href="#office">
        <Icon name="all" />
        <span>Office</span>
      </a>
    </div>
    <JobList jobs={view.jobs} resume={(job) => session.resumeJob(job)} />
    <Cautions />
  </main>
)
