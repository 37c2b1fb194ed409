/** Lines of a table or list that say something: no blank ones, nothing after `#`. */
export const readLines = (text: string): string[] =>
  text
    .split("\n")
    .map((line) => line.replace(/#.*/, "").trim())
    .filter((line) => line !== "")
