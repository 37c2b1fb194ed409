/**
 * Names the rules of this build by a hash over the sources that decide what a row says, so that rows made by others are
 * made anew without anybody having to remember it. Runs in Node when the page is built, never in the page.
 */
import { createHash } from "node:crypto"
import { readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { fileURLToPath } from "node:url"

const src = fileURLToPath(new URL("../", import.meta.url))
const deciding = ["facts", "record", "rules", "search"]

export const rulesVersion = (): string => {
  const hash = createHash("sha256")
  for (const folder of deciding) {
    for (const name of readdirSync(join(src, folder), { recursive: true, encoding: "utf8" }).sort()) {
      if (name.endsWith(".ts")) hash.update(name).update(readFileSync(join(src, folder, name)))
    }
  }
  return hash.digest("hex").slice(0, 16)
}
