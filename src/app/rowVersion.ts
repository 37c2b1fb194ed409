/** Which rules the rows of the list are made by: those of this build, and the pack that is followed. */
import { followedPack } from "./followedPack"

export const rowVersion = `${import.meta.env.VITE_RULES} ${followedPack.id}`
