/** The ears that can be chosen. `device`: the browser's recogniser, and only where it never sends the sound away. */
export const earIds = ["offline", "browser", "device"] as const
export type EarId = (typeof earIds)[number]
