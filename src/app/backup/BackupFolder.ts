/**
 * A folder that the worker chose for copies of the job files. The browser writes a file beside the old one and puts it in
 * its place when it is closed, so a copy is either the old or the new one, never half of one.
 */
import { done, type Outcome, refuse } from "../../facts/Outcome"

interface FolderFile {
  write(text: string): Promise<void>
  close(): Promise<void>
  abort(): Promise<void>
}

/** The part of the browser's folder that is used, so that tests can stand in for it. */
export interface BackupFolder {
  readonly name: string
  getFileHandle(name: string, options: { create: boolean }): Promise<{ createWritable(): Promise<FolderFile> }>
  queryPermission?(what: { mode: "readwrite" }): Promise<PermissionState>
  requestPermission?(what: { mode: "readwrite" }): Promise<PermissionState>
}

/** What the browser's errors mean, fit to stand in a notice. */
const whyNot: Record<string, string> = {
  NotAllowedError: "the browser no longer allows it",
  NotFoundError: "the folder is not there any more",
  QuotaExceededError: "its disk is full",
  NoModificationAllowedError: "the file is in use",
}

/** Writes, or writes anew, one file of the folder. */
export const writeToFolder = async (folder: BackupFolder, name: string, text: string): Promise<Outcome> => {
  let file: FolderFile | null = null
  try {
    file = await (await folder.getFileHandle(name, { create: true })).createWritable()
    await file.write(text)
    await file.close()
    return done(undefined)
  } catch (error) {
    await file?.abort().catch(() => undefined)
    return refuse(whyNot[(error as Error).name] ?? "the folder did not take it")
  }
}

const permission = { mode: "readwrite" } as const

/** Whether the folder may be written to without asking. Browsers that cannot say are believed. */
export const mayWrite = async (folder: BackupFolder): Promise<boolean> =>
  ((await folder.queryPermission?.(permission).catch(() => "denied")) ?? "granted") === "granted"

/** From a tap: has the browser ask the worker, where it must. */
export const askToWrite = async (folder: BackupFolder): Promise<boolean> =>
  (await mayWrite(folder)) || (await folder.requestPermission?.(permission).catch(() => "denied")) === "granted"
