/** `pack`: which rule packs there are, and everything that one of them holds: rules, figures, sources and status. */
import { findPack, packs } from "../rules/packs"
import { rulesTable } from "../rules/rulesTable"
import type { Console, ExitStatus } from "./Console"

type Out = Pick<Console, "print" | "complain">

/** One line a pack: id, title, edition. */
export const listPacks = (io: Out): ExitStatus => {
  for (const { id, title, edition, rules, tables } of packs)
    io.print(`${id}\t${title}\t${edition}\t${rules.length} rules, ${tables.length} tables`)
  return 0
}

/** Markdown, or complains with the ids there are. */
export const showPack = (id: string | undefined, io: Out): ExitStatus => {
  const pack = id === undefined ? undefined : findPack(id)
  if (!pack) {
    const known = packs.map((one) => one.id).join(", ")
    io.complain(id === undefined ? `Which pack? There are ${known}.` : `There is no pack ${id}. There are ${known}.`)
    return 2
  }
  for (const line of rulesTable(pack).split("\n")) io.print(line)
  return 0
}
