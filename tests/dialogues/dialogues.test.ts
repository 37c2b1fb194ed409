/** Every recorded dialogue comes out as it was accepted. ACCEPT=1 rewrites what is expected, for the reviewer to read. */
import { readdirSync, readFileSync, writeFileSync } from "node:fs"
import { join } from "node:path"
import { expect, test } from "vitest"
import { parse, stringify } from "yaml"
import { realTools } from "../realTools"
import { Dialogue, replay } from "./runDialogue"

const folder = import.meta.dirname
const files = readdirSync(folder).filter((file) => file.endsWith(".yaml"))

test.each(files)(
  "%s",
  (file) => {
    const path = join(folder, file)
    const dialogue = Dialogue.parse(parse(readFileSync(path, "utf8")))
    const came = replay(dialogue, realTools())
    if (process.env.ACCEPT) writeFileSync(path, stringify(came, { lineWidth: 120 }))
    else expect(came).toEqual(dialogue)
  },
  30_000,
)
