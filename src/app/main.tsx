/** Puts the app on the page. The first import has to stay the first. */
import "./zodWithoutEval"

import { StrictMode } from "react"
import { createRoot } from "react-dom/client"
import { openDesk } from "./openDesk"
import { openSession } from "./openSession"
import { Page } from "./Page"
import type { Session } from "./Session"
import { applyLook } from "./settings/applyLook"
import { openSettings } from "./settings/SettingsKeeper"
import "./look/tokens.css"
import "./look/page.css"
import "./look/controls.css"
import "./look/start.css"
import "./look/talk.css"
import "./look/answers.css"
import "./look/job.css"
import "./look/warnings.css"
import "./look/record.css"
import "./look/picture.css"
import "./look/settings.css"
import "./look/sign.css"
import "./look/lesson.css"

const settings = openSettings()
applyLook(settings, document.documentElement)

/** One session a page, however often it is drawn. */
let session: Session | undefined
const openOnce = () => {
  session ??= openSession(settings)
  return session
}

createRoot(document.getElementById("root")!).render(
  <StrictMode>
    <Page openSession={openOnce} openDesk={() => openDesk(settings)} />
  </StrictMode>,
)
