/** The screens of an open job, and which of them the address names. */

export const jobScreens = ["now", "picture", "record", "findings", "sign-off", "settings"] as const
export type JobScreen = (typeof jobScreens)[number]

/** Anything unknown is the screen of the moment: a job in hand is never hidden by a wrong address. */
export const jobScreenOf = (hash: string): JobScreen => jobScreens.find((screen) => hash === `#${screen}`) ?? "now"
