/** Whether a struck line fits where it is to stand. Apart from the striking, since every store needs it and no more. */
import type { LogLine } from "./LogLine"

/** Why a store refuses to strike. */
export const notThere = "That line is not stored on this device."

/** Whether one line may take the place of the other: all that the log goes by is the same. */
export const isSamePlace = (a: LogLine, b: LogLine): boolean =>
  a.id === b.id && a.job === b.job && a.seq === b.seq && a.type === b.type && a.at === b.at
