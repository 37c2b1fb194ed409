/**
 * One made-up state, for looking at and never shipped: `gallery.html?view=busyJob&theme=dark&text=150#record`. `shots.ts`
 * takes its pictures here.
 */
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
import "../../src/app/look/settings.css"
import "../../src/app/look/sign.css"
import "../../src/app/look/lesson.css"
import { createMadeUpSession } from "./createMadeUpSession"
import { madeUpViews } from "./madeUpViews"

const asked = new URLSearchParams(location.search)
const name = asked.get("view") as keyof typeof madeUpViews
const { dataset } = document.documentElement
for (const what of ["theme", "text"]) {
  const value = asked.get(what)
  if (value) dataset[what] = value
}

createRoot(document.getElementById("root")!).render(
  <App session={createMadeUpSession((madeUpViews[name] ?? madeUpViews.start)())} />,
)
