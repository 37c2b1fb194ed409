/** What a word is when no phrase took it, from saying nothing to saying that somebody talks of something else. */
export type Leftover = "skippable" | "neutral" | "chatter" | "unknown"
