/** The thing at the far end of a bond, drawn as a plain sign in a box, with its fittings where they were said. */
import type { Step } from "../../facts/Fact"
import type { Item } from "../../facts/Item"
import { places } from "./layoutPicture"

const signs: Partial<Record<Item, string>> = {
  water: "M24 9c6 8 10 12 10 18a10 10 0 0 1-20 0c0-6 4-10 10-18Z",
  gas: "M25 8c1 7 9 10 9 19a10 10 0 0 1-20 1c0-5 3-6 4-10 2 2 3 3 3 5 3-4 4-9 4-15Z",
  oil: "M14 12h20v26H14Z M14 20h20 M14 30h20",
  structural_steel: "M13 11h22v5h-8v16h8v5H13v-5h8V16h-8Z",
  heating: "M12 14v20 M18 12v24 M24 12v24 M30 12v24 M36 14v20 M12 18h24 M12 30h24",
  lightning_protection: "M27 8 15 26h8l-3 14 13-19h-8Z",
}
const pipe = "M24 13a11 11 0 1 0 .01 0Z M24 19a5 5 0 1 0 .01 0Z"

/** `x` and `y` are the middle of the box's near side, where the conductor arrives. */
export const PartSymbol = ({ item, steps, x, y }: { item: Item; steps: readonly Step[]; x: number; y: number }) => (
  <g transform={`translate(${x} ${y - places.partSize / 2})`}>
    <rect className="part-box" width={places.partSize} height={places.partSize} rx="10" />
    <path className="part-sign" d={signs[item] ?? pipe} />
    {steps.includes("clamp_fitted") && <path className="part-clamp" d="M4 13h-9v22h9" />}
    {steps.includes("label_fitted") && <path className="part-label" d="M-22 24v7 M-22 31l-7 5v13h14V36Z" />}
    {steps.includes("pipe_cleaned") && <path className="part-clean" d="M40 4v8 M36 8h8" />}
  </g>
)
