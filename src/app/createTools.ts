/** The interpreter, the rules and the store of this build, for the page and for the worker that takes files in. */
import { v7 } from "uuid"
import type { Tools } from "../dialogue/Tools"
import { createInterpreter, type Interpreter } from "../interpret/createInterpreter"
import { dropOldestSound } from "../record/dropOldestSound"
import { createIndexedDbStore } from "../record/indexedDbStore"
import { pageDatabase } from "../record/JobsDatabase"
import type { Store } from "../record/Store"
import { createChecker } from "../rules/createChecker"
import { findPack } from "../rules/packs"
import { createRowMaker } from "../search/makeRow"
import { createJobNews, type JobNews, tellingStore } from "./device/JobNews"
import { followedPack } from "./followedPack"
import { grammarFiles } from "./grammarFiles"
import { rowVersion } from "./rowVersion"

/** What reads words, made when it is first asked for: a page shows its job before anybody speaks. */
const createReader = () => {
  let made: Interpreter | null = null
  return () => {
    made ??= createInterpreter(grammarFiles)
    return made
  }
}

/** The interpreter, and what the loop and the office share. */
export const createTools = () => {
  const interpreter = createReader()
  const checker = createChecker(findPack(followedPack.id)!)
  const tools: Tools = {
    interpret: (heard, context) => interpreter().interpret(heard, context),
    check: (situation) => checker.check(situation),
    newId: () => v7(),
  }
  return { interpreter, tools }
}

/**
 * All sides write rows, so that the office's list is right whichever of them wrote last, and tell the others.
 * `soundDropped` is told how many clips gave way to lines on a full device.
 */
export const createStore = (
  { check }: Tools,
  soundDropped: (clips: number) => void,
  news: JobNews = createJobNews(),
): Store =>
  tellingStore(
    createIndexedDbStore(pageDatabase, createRowMaker(check, rowVersion), dropOldestSound(soundDropped)),
    news,
  )
