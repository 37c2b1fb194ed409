/** What a page that is starting says to a newer version that waits. The answer is `true` where it takes over. */
export const takeOver = { do: "takeOver" } as const

export const isTakeOver = (message: unknown): boolean =>
  typeof message === "object" && message !== null && "do" in message && message.do === takeOver.do
