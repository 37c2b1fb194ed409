/** Builds situations for tests out of plain values; the entry of each value is named after it. */
import { type ItemSituation, Situation } from "../../src/facts/Situation"

export interface PlainItem {
  item: string
  csaMm2?: number
  lengthM?: number
  distanceMm?: number
  ohms?: number | null
  over?: boolean
  nulled?: boolean
  oneEndOff?: boolean
  steps?: readonly string[]
}

export interface PlainSupply {
  arrangement?: "TN-S" | "TN-C-S" | "TT"
  neutralMm2?: number
  fuseA?: number
  polarity?: "correct" | "reversed"
  provedDead?: boolean
  leadsNulled?: boolean
}

export const instrument = { percent: 2, digits: 3, digitOhms: 0.01, assumed: true }

const known = (value: unknown, entry: string) => (value === undefined ? undefined : { value, entry })

const toItem = (plain: PlainItem): unknown => ({
  item: plain.item,
  csaMm2: known(plain.csaMm2, `${plain.item}.csa`),
  lengthM: known(plain.lengthM, `${plain.item}.length`),
  distanceMm: known(plain.distanceMm, `${plain.item}.distance`),
  reading:
    plain.ohms === undefined
      ? undefined
      : {
          ohms: plain.ohms,
          ...((plain.over || plain.ohms === null) && { qualifier: ">" }),
          entry: `${plain.item}.ohms`,
          leadsNulled: plain.nulled ?? true,
          oneEndDisconnected: plain.oneEndOff ?? true,
        },
  steps: Object.fromEntries((plain.steps ?? []).map((step) => [step, { value: true, entry: `${plain.item}.${step}` }])),
})

export const situation = (supply: PlainSupply, ...items: PlainItem[]): Situation =>
  Situation.parse({
    supply: {
      arrangement: known(supply.arrangement, "supply.arrangement"),
      neutralMm2: known(supply.neutralMm2, "supply.neutral"),
      fuseA: known(supply.fuseA, "supply.fuse"),
      polarity: known(supply.polarity, "supply.polarity"),
    },
    items: items.map(toItem),
    ...(supply.provedDead && { isolatedProvedDead: { value: true, entry: "job.dead" } }),
    ...(supply.leadsNulled && { leadsNulled: { value: true, entry: "job.nulled" } }),
    instrument,
  })

export const onlyItem = (plain: PlainItem): ItemSituation => situation({}, plain).items[0]!
