/** The rule pack that new jobs follow, without its rules. There is one whose figures were seen; see `src/rules/packs`. */
import { ukBs7671About } from "../rules/packs/uk-bs7671/about"

export const followedPack = ukBs7671About
