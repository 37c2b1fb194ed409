/** Hands the job to another app of the phone, such as mail. Where the browser cannot, there is nothing to see. */
import { Icon } from "../parts/Icon"
import type { Session } from "../Session"
import { canShareFiles } from "../Sharing"

export const ShareButtons = ({ session }: { session: Session }) => {
  if (!canShareFiles()) return null
  return (
    <div className="share-ways">
      <button type="button" onClick={() => session.share("report")}>
        <Icon name="send" />
        <span>Share the report</span>
      </button>
      <button type="button" onClick={() => session.share("job file")}>
        <Icon name="send" />
        <span>Share the job file</span>
      </button>
    </div>
  )
}
