/** Offered on the start page until it was taken or put aside; it stays in the settings. */
import { Icon } from "../parts/Icon"
import type { Session } from "../Session"
import { useSettings } from "../settings/useSettings"

export const LessonCard = ({ session }: { session: Session }) => {
  const { lessonSeen } = useSettings(session.settings)
  if (lessonSeen) return null
  return (
    <section className="lesson-offer" aria-labelledby="lesson-head">
      <h2 id="lesson-head">First time here?</h2>
      <p>A minute by voice: is the microphone heard, how to say no, what a warning sounds like.</p>
      <div className="way-row">
        <a className="button" href="#lesson">
          <Icon name="lesson" />
          <span>First lesson</span>
        </a>
        <button type="button" onClick={() => session.settings.change({ lessonSeen: true })}>
          Not now
        </button>
      </div>
    </section>
  )
}
