/** `hear`: the offline ear over recordings, with what the interpreter makes of them. */
import type { Console, ExitStatus } from "./Console"
import { hearFiles } from "./hearFiles"
import { loadLoopTools } from "./loopTools"
import { openEar } from "./openEar"

export const hearCommand = async (
  files: string[],
  options: { asked?: string; item?: string; to: "jsonl" | "vtt" },
  io: Console,
): Promise<ExitStatus> => {
  const tools = loadLoopTools("uk-bs7671")
  if (!tools.ok) {
    io.complain(tools.because)
    return 2
  }
  const { asked, item } = options
  const context = { ...(asked && { asked }), ...(item && { item }) }
  const { interpreter, interpret } = tools.value
  return hearFiles(
    { files, context, to: options.to },
    {
      openEar,
      earGrammar: (wanted) => interpreter.earGrammar(wanted),
      interpret,
      print: (line) => io.print(line),
      complain: (line) => io.complain(line),
    },
  )
}
