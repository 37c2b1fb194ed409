/** Plain sentences for the worker. Trouble is announced at once, news when there is time. */

import { Icon } from "../parts/Icon"
import { Mark } from "../parts/Mark"
import type { Notice, Session, SessionView } from "../Session"

const OneNotice = ({ notice, dismiss }: { notice: Notice; dismiss: () => void }) => (
  <div className={`notice notice-${notice.kind}`} role={notice.kind === "trouble" ? "alert" : "status"}>
    <Mark shape={notice.kind === "trouble" ? "warn" : "note"} />
    <p>
      <strong>{notice.kind === "trouble" ? "Trouble. " : ""}</strong>
      {notice.words}
    </p>
    <button type="button" className="small-button" onClick={dismiss} aria-label={`Close: ${notice.words}`}>
      <Icon name="no" />
    </button>
  </div>
)

export const Notices = ({ view, session }: { view: SessionView; session: Session }) =>
  view.notices.length === 0 ? null : (
    <div className="notices">
      {view.notices.map((notice) => (
        <OneNotice key={notice.id} notice={notice} dismiss={() => session.dismiss(notice.id)} />
      ))}
    </div>
  )
