/** The sound side of a desk on which none was kept. */
import type { DeskSound } from "../../../src/app/office/Desk"
import { DroppedSound } from "../../../src/app/sound/DroppedSound"
import { done } from "../../../src/facts/Outcome"

export const noSound = (): DeskSound => ({
  of: async () => null,
  silence: async () => done(undefined),
  isOn: () => false,
  dropped: new DroppedSound(),
})
