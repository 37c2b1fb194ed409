/** `npm run bench [-- name …]`: measures and prints; nothing here passes or fails. */
import { readdirSync } from "node:fs"
import { basename, dirname } from "node:path"
import { fileURLToPath } from "node:url"

const folder = dirname(fileURLToPath(import.meta.url))
const all = readdirSync(folder)
  .filter((file) => file.endsWith(".ts") && file !== "main.ts")
  .map((file) => basename(file, ".ts"))
const wanted = process.argv.slice(2)
const unknown = wanted.filter((name) => !all.includes(name))
if (unknown.length > 0) {
  console.error(`There is no bench "${unknown[0]}". There are: ${all.join(", ")}.`)
  process.exit(2)
}
for (const name of wanted.length > 0 ? wanted : all) {
  console.log(`\n== ${name}`)
  const bench = (await import(`./${name}.ts`)) as { run?: () => Promise<void> }
  if (bench.run) await bench.run()
}
