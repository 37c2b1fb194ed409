/** An aluminium conductor as the copper one of equal conductance, which is what the table of PME bonds counts. */
import { done, type Outcome } from "../facts/Outcome"
import { ohmsPerMetre } from "./ohmsPerMetre"

/** Area of copper in mm² that conducts as well, by the resistances of IEC 60228. Refuses sizes it does not list. */
export const copperEquivalentMm2 = (aluminiumMm2: number): Outcome<number> => {
  const aluminium = ohmsPerMetre({ csaMm2: aluminiumMm2, metal: "aluminium" })
  if (!aluminium.ok) return aluminium
  const copper = ohmsPerMetre({ csaMm2: aluminiumMm2 })
  return copper.ok ? done((aluminiumMm2 * copper.value) / aluminium.value) : copper
}
