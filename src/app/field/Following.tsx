/** Another window has this job in hand: said plainly, with the way to take it over. */
import { Icon } from "../parts/Icon"
import { Mark } from "../parts/Mark"
import type { Session } from "../Session"

export const Following = ({ session }: { session: Session }) => (
  <section className="following" aria-label="Another window">
    <Mark shape="note" />
    <p>
      <strong>Another window has this job in hand.</strong> Here it can be looked at, and it follows what is said there.
    </p>
    <button type="button" onClick={() => session.takeOver()}>
      <Icon name="ear" />
      <span>Take over here</span>
    </button>
  </section>
)
