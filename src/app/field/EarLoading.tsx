/** How far the ear pack has come, while it is being loaded. Everything else works meanwhile. */
import type { SessionView } from "../Session"

export const EarLoading = ({ view }: { view: SessionView }) => {
  const { loading } = view.ear
  if (loading === null) return null
  const percent = Math.round(loading * 100)
  return (
    <div className="ear-loading">
      <label htmlFor="ear-loading">Getting the ear ready: {percent} %</label>
      <progress id="ear-loading" max={100} value={percent} />
    </div>
  )
}
