/** Where the job is, and the tap that starts it. */
import { useState } from "react"
import { Icon } from "../parts/Icon"
import type { Session } from "../Session"

export const NewJob = ({ session }: { session: Session }) => {
  const [place, setPlace] = useState("")
  const named = place.trim()
  return (
    <form
      className="new-job"
      onSubmit={(event) => {
        event.preventDefault()
        if (named) session.newJob(named)
      }}
    >
      <label htmlFor="place">Where is the job?</label>
      <input
        id="place"
        value={place}
        maxLength={200}
        autoComplete="off"
        placeholder="Bakery, flat above"
        required
        onChange={(event) => setPlace(event.target.value)}
      />
      <button type="submit" className="main-button">
        <Icon name="ear" />
        <span>Start a job</span>
      </button>
    </form>
  )
}
