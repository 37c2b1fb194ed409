/** How long the checker takes for a job of twelve bonds, from nothing, and again after one value has changed. */
import { createChecker } from "../../src/rules/createChecker"
import { findPack } from "../../src/rules/packs"
import { situation } from "../rules/situations"

const rounds = 400
const bonds = Array.from({ length: 12 }, (_, at) => ({
  item: `part_${at + 1}`,
  csaMm2: at % 3 === 0 ? 6 : 10,
  lengthM: 8 + at,
  distanceMm: 300 + 60 * at,
  ohms: 0.02 + at / 100,
  steps: ["pipe_cleaned", "clamp_fitted", "one_end_disconnected", "connected_to_met"],
}))
const job = (csaMm2: number) =>
  situation({ arrangement: "TN-C-S", neutralMm2: 25, provedDead: true }, ...bonds, { item: "water", csaMm2 })

/** Middle and 95th percentile in milliseconds. */
const time = (work: () => void) => {
  const took = Array.from({ length: rounds }, () => {
    const start = performance.now()
    work()
    return performance.now() - start
  }).sort((a, b) => a - b)
  return { middle: took[rounds / 2]!, high: took[Math.floor(rounds * 0.95)]! }
}

export const run = async (): Promise<void> => {
  const pack = findPack("uk-bs7671")!
  const [one, other] = [job(10), job(16)]
  const fresh = time(() => createChecker(pack).check(one))
  const checker = createChecker(pack)
  let turn = false
  const again = time(() => {
    turn = !turn
    checker.check(turn ? one : other)
  })
  const show = ({ middle, high }: typeof fresh) => `${middle.toFixed(3)} ms, 95 % under ${high.toFixed(3)} ms`
  console.log(`check of ${one.items.length} bonds, nothing remembered: ${show(fresh)}`)
  console.log(`the same after one value has changed: ${show(again)}`)
}
