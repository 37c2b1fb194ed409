/**
 * Keeps a spreadsheet from running a text. An apostrophe goes before what a cell could begin with to be a formula: at the
 * start of the text, and after every sign within it at which a spreadsheet that is set to other separators would begin a
 * new cell, since quotes do not help there.
 */

/** Signs that make a cell a formula; the wide forms are read like the narrow. */
const runs = "=+\\-@\\uFF1D\\uFF0B\\uFF0D\\uFF20"

/** Spaces and quotes may be taken off by whoever reads the cell. */
const atStart = new RegExp(`^(?=[\\s"'\\u201C\\u201D]*[${runs}]|[\\t\\r\\n])`)
const afterSeparator = new RegExp(
  `([;|\\t\\r\\n\\v\\f\\u2028\\u2029\\u001C-\\u001F])(?=[\\s"'\\u201C\\u201D]*[${runs}])`,
  "g",
)

/** The text as a cell may hold it. Numbers are not texts and are never guarded. */
export const guardFormula = (text: string): string => text.replaceAll(afterSeparator, "$1'").replace(atStart, "'")
