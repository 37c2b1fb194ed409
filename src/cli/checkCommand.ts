/** `check`: prints what the rules say of a job file. */

import type { Console, ExitStatus } from "./Console"
import { checkJobText } from "./checkFile"
import { loadLoopTools } from "./loopTools"
import { ofFile, readText } from "./readInput"

export const checkCommand = async (
  file: string,
  options: { json?: boolean; pack: string },
  io: Console,
): Promise<ExitStatus> => {
  const tools = loadLoopTools(options.pack)
  const text = await readText(file)
  const checked =
    tools.ok && text.ok ? checkJobText(text.value, options.json ?? false, tools.value.check) : tools.ok ? text : tools
  if (!checked.ok) {
    io.complain(ofFile(file, checked.because))
    return 2
  }
  const { lines, status } = checked.value as { lines: string[]; status: ExitStatus }
  for (const line of lines) io.print(line)
  return status
}
