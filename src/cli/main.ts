/**
 * The command line. Each command prints to standard output, complains in one plain line on standard error, and ends
 * with 0 (fine), 1 (a stop stands open) or 2 (bad input). Commands are loaded when they are asked for.
 */
import { createInterface } from "node:readline"
import { Command, Option } from "commander"
import type { Console, ExitStatus } from "./Console"

const console_: Console = {
  print: (line) => void process.stdout.write(`${line}\n`),
  complain: (line) => void process.stderr.write(`${line}\n`),
  lines: () => createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY }),
}

// A reader that has seen enough, such as `head`, closes the pipe: that is no fault.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit(0)
  throw error
})

/** Ends with the command's status; a fault of ours is one line too, and never a stack. */
const run = (work: () => Promise<ExitStatus>) => async () => {
  try {
    process.exitCode = await work()
  } catch (error) {
    console_.complain(`Something went wrong inside Bothhands: ${(error as Error).message}`)
    process.exitCode = 2
  }
}

const program = new Command("bothhands")
  .description("Spoken, checked and confirmed records of earthing and bonding work")
  .showHelpAfterError("(see --help)")
  .exitOverride((error) => {
    throw error
  })

const pack = new Option("--pack <id>", "rule pack to check by").default("uk-bs7671")

program
  .command("ear")
  .description("fetch the offline ear's model and make the fallback voice, as the build does")
  .action(run(async () => (await import("./makePacks")).makePacks(console_)))

program
  .command("interpret")
  .description("lines of text, or JSON lines with text and context, on standard input → facts, one JSON line each")
  .action(
    run(async () => {
      const { createInterpreter } = await import("../interpret/createInterpreter")
      const { readGrammars } = await import("./readGrammars")
      return (await import("./interpretLines")).interpretLines(createInterpreter(readGrammars()), console_)
    }),
  )

program
  .command("hear")
  .argument("<file...>", "recordings (.wav)")
  .description("the offline ear over recordings → one JSON line an utterance")
  .option("--asked <kind>", "the question that stands open")
  .option("--item <item>", "the part the words are about")
  .addOption(new Option("--to <format>", "what to print").choices(["jsonl", "vtt"]).default("jsonl"))
  .action((files: string[], options: { asked?: string; item?: string; to: "jsonl" | "vtt" }) =>
    run(async () => (await import("./hearCommand")).hearCommand(files, options, console_))(),
  )

program
  .command("log")
  .argument("<file>", "a transcript (.vtt .srt .txt .jsonl) or a recording (.wav)")
  .description("the whole loop over a transcript or a recording: what is said back, the record, the findings")
  .option("--out <job>", "write the job file here")
  .option("--place <name>", "what the job is called", "The bakery with the flat above")
  .option("--start <time>", "when it began, ISO 8601 (now, if not given)")
  .option("--live", "the app was answering meanwhile, so a yes is an answer to it (else nothing counts as accepted)")
  .option("--json", "print JSON lines")
  .addOption(pack)
  .action((file: string, options) =>
    run(async () => (await import("./logCommand")).logCommand(file, options, console_))(),
  )

program
  .command("check")
  .argument("<job>", "a job file")
  .description("what the rules say about a job file")
  .option("--json", "print JSON lines")
  .addOption(pack)
  .action((file: string, options) =>
    run(async () => (await import("./checkCommand")).checkCommand(file, options, console_))(),
  )

program
  .command("export")
  .argument("<path...>", "job files, or folders with job files (.bothhands.jsonl)")
  .description("jobs as CSV, WebVTT, a PDF report and JSON with its schemas; all of them where none is named")
  .requiredOption("--to <folder>", "where the files go")
  .option("--csv", "one row a value")
  .option("--vtt", "what was said, with times")
  .option("--json", "the record and its log")
  .option("--pdf", "a report to read, print and sign")
  .option("--schema", "JSON Schemas of the job file and of the JSON")
  .option("--replace", "write over files that are there")
  .action((paths: string[], options) =>
    run(async () => (await import("./exportCommand")).exportCommand(paths, options, console_))(),
  )

program
  .command("size")
  .description("sizing questions as JSON lines on standard input → value, unit, because, clause, status")
  .action(run(async () => (await import("./sizeLines")).sizeLines(console_.lines(), console_)))

program
  .command("pack")
  .argument("[what]", "list or show", "list")
  .argument("[id]", "which pack")
  .description("the rule packs: editions, figures, status")
  .action((what: string, id: string | undefined) =>
    run(async () => {
      const { listPacks, showPack } = await import("./packs")
      if (what === "list") return listPacks(console_)
      if (what === "show") return showPack(id, console_)
      console_.complain(`There is "pack list" and "pack show ID", but no "pack ${what}".`)
      return 2
    })(),
  )

program
  .command("record")
  .argument("<script>", "a recording script (.yaml)")
  .argument("<wav>", "recording to write; its transcript is written beside it")
  .description("speak a script into a recording with synthetic voices")
  .action((script: string, wav: string) =>
    run(async () => (await import("./recordCommand")).recordCommand(script, wav, console_))(),
  )

program
  .command("try")
  .argument("<sentence...>", "what was said")
  .description("why a sentence is read the way it is")
  .option("--asked <kind>", "the question that stands open")
  .option("--item <item>", "the part the words are about")
  .action((words: string[], context: { asked?: string; item?: string }) =>
    run(async () => (await import("./grammarCommands")).tryCommand(words.join(" "), context, console_))(),
  )

program
  .command("sample")
  .argument("<rule>", "a rule by its full name, such as ear.open")
  .argument("[count]", "how many sentences", "10")
  .option("--seed <number>", "another number gives other sentences", "1")
  .description("sentences that a grammar rule allows")
  .action((rule: string, count: string, { seed }: { seed: string }) =>
    run(async () => (await import("./grammarCommands")).sampleCommand(rule, Number(count), Number(seed), console_))(),
  )

program
  .command("clashes")
  .description("examples in the grammars that another rule takes")
  .action(run(async () => (await import("./grammarCommands")).clashesCommand(console_)))

try {
  await program.parseAsync()
} catch (error) {
  const { exitCode } = error as { exitCode?: number }
  process.exitCode = exitCode === 0 ? 0 : 2
}
