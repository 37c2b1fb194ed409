/** Rules that rest on physics and on safe order of work, in the order that a worker meets them: every pack has them. */
import type { Rule } from "../Rule"
import { bondIsConnected } from "./bondIsConnected"
import { bondIsNotOpen } from "./bondIsNotOpen"
import { clampIsOn } from "./clampIsOn"
import { endIsBackOn } from "./endIsBackOn"
import { leadsWereNulled } from "./leadsWereNulled"
import { nobodyWorksLiveAlone } from "./nobodyWorksLiveAlone"
import { oneEndWasOff } from "./oneEndWasOff"
import { polarityIsAsItShouldBe } from "./polarityIsAsItShouldBe"
import { provedDeadFirst } from "./provedDeadFirst"
import { readingFitsConductor } from "./readingFitsConductor"

export const universalRules: readonly Rule[] = [
  nobodyWorksLiveAlone,
  polarityIsAsItShouldBe,
  provedDeadFirst,
  clampIsOn,
  leadsWereNulled,
  oneEndWasOff,
  readingFitsConductor,
  bondIsNotOpen,
  endIsBackOn,
  bondIsConnected,
]
