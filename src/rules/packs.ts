/** The packs there are. A new one is a folder under `packs/` and one line here. */
import type { Pack } from "./Pack"
import { ukBs7671 } from "./packs/uk-bs7671/pack"

export const packs: readonly Pack[] = [ukBs7671]

/** The pack of this id, if there is one. */
export const findPack = (id: string): Pack | undefined => packs.find((pack) => pack.id === id)
