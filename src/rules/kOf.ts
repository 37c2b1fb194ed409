/** Finds the k of a protective conductor: how much heat it can take in a fault, by metal, insulation and where it runs. */
import type { Source, Status } from "../facts/Finding"
import { done, type Outcome, refuse } from "../facts/Outcome"
import { kBare } from "./tables/kBare"
import { kConduit } from "./tables/kConduit"
import { kInCable } from "./tables/kInCable"
import { kNotInCable } from "./tables/kNotInCable"
import { kSheath } from "./tables/kSheath"

const tables = { notInCable: kNotInCable, inCable: kInCable, sheath: kSheath, conduit: kConduit, bare: kBare } as const

export type ProtectiveRun = keyof typeof tables

export interface KWanted {
  run: ProtectiveRun
  metal: string
  insulation: string
  /** Area of the conductor; above 300 mm² some k are smaller. */
  csaMm2?: number
}

interface KRow {
  metal: string
  insulation: string
  k: number
  /** Absent or null where a larger area changes nothing. */
  kOver300Mm2?: number | null
  status?: Status
}

/** k in A·√s/mm². A figure from memory says so in its status. */
export const kOf = ({
  run,
  metal,
  insulation,
  csaMm2,
}: KWanted): Outcome<{ k: number; status: Status; source: Source }> => {
  const table = tables[run]
  const rows: readonly KRow[] = table.rows
  const row = rows.find((one) => one.metal === metal && one.insulation === insulation)
  if (!row) return refuse(`There is no k for ${metal}, ${insulation}, ${table.title}.`)
  const k = csaMm2 !== undefined && csaMm2 > 300 ? (row.kOver300Mm2 ?? row.k) : row.k
  return done({ k, status: row.status ?? table.status, source: table.source })
}
