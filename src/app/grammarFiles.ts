/** What can be said, as text in the build, for the page and for the worker that takes files in. */

const files = import.meta.glob<string>("../../grammars/**/*.{jsgf,tsv,txt}", {
  query: "?raw",
  import: "default",
  eager: true,
})

/** Keyed by the path inside `grammars/`, as the interpreter takes them. */
export const grammarFiles: Record<string, string> = Object.fromEntries(
  Object.entries(files).map(([path, text]) => [path.replace("../../grammars/", ""), text]),
)
