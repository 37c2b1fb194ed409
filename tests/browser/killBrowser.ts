/** Ends every process of a browser at once, as a flat battery or an impatient system would. */
import { execFileSync } from "node:child_process"
import { existsSync, readdirSync, readFileSync } from "node:fs"

const commandOf = (pid: string) => {
  try {
    return readFileSync(`/proc/${pid}/cmdline`, "utf8")
  } catch {
    return ""
  }
}

/** Kills by the profile's folder, which no other browser has in its command line. Gives how many processes it killed. */
export const killBrowser = (profile: string): number => {
  if (!existsSync("/proc/self/cmdline")) {
    execFileSync("pkill", ["-9", "-f", profile])
    return 1
  }
  const pids = readdirSync("/proc").filter((name) => /^\d+$/.test(name) && commandOf(name).includes(profile))
  for (const pid of pids) {
    // The first kill takes others with it, and a number that has been given anew belongs to somebody else.
    if (!commandOf(pid).includes(profile)) continue
    try {
      process.kill(Number(pid), "SIGKILL")
    } catch {
      // It ended by itself in between.
    }
  }
  return pids.length
}
