/** Puts the app on the page. The first import has to stay the first. */
import "./zodWithoutEval"

import { StrictMode } from "react"
import { createRoot } from "react-dom/client"
import { openDesk } from "./openDesk"
import { openSession } from "./openSession"
import { Page } from "./Page"
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

createRoot(document.getElementById("root")!).render(
  <StrictMode>
    <Page openSession={openSession} openDesk={openDesk} />
  </StrictMode>,
)
