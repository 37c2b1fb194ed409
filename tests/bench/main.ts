/**
 * `npm run bench [-- name [argument …] …]`: measures and prints; nothing here passes or fails. A word that names no bench
 * is an argument of the one before it.
 */
import { readdirSync } from "node:fs"
import { basename, dirname } from "node:path"
import { fileURLToPath } from "node:url"

const folder = dirname(fileURLToPath(import.meta.url))
const all = readdirSync(folder)
  .filter((file) => file.endsWith(".ts") && file !== "main.ts")
  .map((file) => basename(file, ".ts"))

const wanted: { name: string; args: string[] }[] = []
for (const word of process.argv.slice(2)) {
  const last = wanted.at(-1)
  if (last && !all.includes(word)) last.args.push(word)
  else wanted.push({ name: word, args: [] })
}
if (wanted[0] && !all.includes(wanted[0].name)) {
  console.error(`There is no bench "${wanted[0].name}". There are: ${all.join(", ")}.`)
  process.exit(2)
}
for (const { name, args } of wanted.length > 0 ? wanted : all.map((name) => ({ name, args: [] }))) {
  console.log(`\n== ${name}`)
  const bench = (await import(`./${name}.ts`)) as { run?: (args: string[]) => Promise<void> }
  if (bench.run) await bench.run(args)
}
