/** One made-up state of the screen, named after the hash: for looking at, never shipped. */
import { createRoot } from "react-dom/client"
import { App } from "../../src/app/App"
import "../../src/app/look/tokens.css"
import "../../src/app/look/page.css"
import "../../src/app/look/controls.css"
import "../../src/app/look/start.css"
import "../../src/app/look/talk.css"
import "../../src/app/look/answers.css"
import "../../src/app/look/job.css"
import "../../src/app/look/warnings.css"
import "../../src/app/look/record.css"
import "../../src/app/look/picture.css"
import { createMadeUpSession } from "./createMadeUpSession"
import { madeUpViews } from "./madeUpViews"

const name = location.hash.slice(1) as keyof typeof madeUpViews
createRoot(document.getElementById("root")!).render(
  <App session={createMadeUpSession((madeUpViews[name] ?? madeUpViews.start)())} />,
)
