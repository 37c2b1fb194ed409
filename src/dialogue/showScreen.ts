/**
 * Screens and files by voice: what a thumb can reach, a word can. Each answer says what is to be seen, for a worker who
 * looks elsewhere, and holds no wish itself.
 */
import type { SavedFile, Screen } from "../facts/Interpretation"
import type { Turn } from "./Turn"

const shown: Readonly<Record<Screen, string>> = {
  now: "Here is where we are.",
  picture: "Here is the picture.",
  record: "Here is the record.",
  findings: "Here is what I found.",
  "sign-off": "Here is the end of the job.",
  settings: "Here is what you can set.",
}

export const showScreen = (turn: Turn, screen: Screen): void => {
  turn.have({ do: "show", screen })
  turn.say(shown[screen])
}

export const saveFile = (turn: Turn, what: SavedFile): void => {
  turn.have({ do: "save", what })
  turn.say(what === "report" ? "Here is the report." : "Here is the file of the job.")
}
