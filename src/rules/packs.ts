/** The packs there are. A new one is a folder under `packs/` and one line here. */
import type { Pack } from "./Pack"
import { auNz3000 } from "./packs/au-nz-3000/pack"
import { iec60364 } from "./packs/iec-60364/pack"
import { ukBs7671 } from "./packs/uk-bs7671/pack"
import { usNec } from "./packs/us-nec/pack"

export const packs: readonly Pack[] = [ukBs7671, iec60364, usNec, auNz3000]

/** The pack of this id, if there is one. */
export const findPack = (id: string): Pack | undefined => packs.find((pack) => pack.id === id)
