/** Check-ins of a worker who is alone: what they do, what they do not, and whom to call. The app itself sends nothing. */
import { useState } from "react"
import type { Session, SessionView } from "../Session"
import { CheckInButton } from "./CheckInButton"
import { ContactWays } from "./ContactWays"
import { isNumber, type Settings } from "./Settings"
import type { SettingsKeeper } from "./SettingsKeeper"

const everyMinutes = [5, 10, 15, 30, 45, 60] as const

const Contact = ({ settings, keeper }: { settings: Settings; keeper: SettingsKeeper }) => {
  const [text, setText] = useState(settings.contact)
  const fits = isNumber(text)
  return (
    <>
      <label htmlFor="contact">Whom to reach (telephone number)</label>
      <input
        id="contact"
        type="tel"
        inputMode="tel"
        autoComplete="off"
        value={text}
        maxLength={30}
        aria-describedby="contact-refused"
        onChange={(event) => {
          setText(event.target.value)
          if (isNumber(event.target.value)) keeper.change({ contact: event.target.value.trim() })
        }}
      />
      <p className="refused" id="contact-refused" role="alert">
        {fits ? "" : "Digits only, with a plus in front if need be."}
      </p>
    </>
  )
}

interface AloneProps {
  settings: Settings
  view: SessionView
  session: Session
}

export const AloneSection = ({ settings, view, session }: AloneProps) => (
  <section aria-labelledby="alone-head">
    <h3 id="alone-head">Working alone</h3>
    <p>
      Say “check on me every fifteen minutes” in a job. If you then are silent that long, the app asks if you are all
      right, asks again louder, and then sounds and shows an alarm.
    </p>
    <p className="quiet">
      It is a reminder and not a safety device: it hears nothing while the page is shut or the screen is locked, and it
      sends nothing by itself. At the alarm, the number below is one tap away for whoever finds the phone.
    </p>
    <label htmlFor="check-in">Check-in offered by tap, every</label>
    <select
      id="check-in"
      value={settings.checkInMinutes}
      onChange={(event) => session.settings.change({ checkInMinutes: Number(event.target.value) })}
    >
      {everyMinutes.map((minutes) => (
        <option key={minutes} value={minutes}>
          {minutes} minutes
        </option>
      ))}
    </select>
    <Contact settings={settings} keeper={session.settings} />
    <ContactWays contact={settings.contact} />
    {view.phase === "job" && <CheckInButton view={view} session={session} settings={settings} />}
  </section>
)
