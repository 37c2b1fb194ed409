/**
 * Reads one JSGF file into rules. `header;`, `grammar name;`, imports, doc comments, weights, tags, optional and
 * repeated parts are understood; a tag binds to the one part before it, as the format says.
 */
import type { Expansion, GrammarFile, Rule } from "./Expansion"
import { GrammarError } from "./GrammarError"
import { type JsgfToken, readJsgfTokens } from "./readJsgfTokens"

/** Reads the text of one grammar. Throws `GrammarError` with file and line for text that is not JSGF. */
export function parseJsgf(text: string, file: string): GrammarFile {
  const header = /^#JSGF\s+V1\.0([^;]*);/.exec(text)
  if (!header) throw new GrammarError(file, 1, "must begin with #JSGF V1.0")
  const language = header[1]!.trim().split(/\s+/)[1] ?? ""
  return new Reader(
    readJsgfTokens(" ".repeat(header[0].length) + text.slice(header[0].length), file),
    file,
    language,
  ).read()
}

class Reader {
  private at = 0
  constructor(
    private readonly tokens: readonly JsgfToken[],
    private readonly file: string,
    private readonly language: string,
  ) {}

  read(): GrammarFile {
    this.skipDocs()
    this.take("word", "grammar")
    const name = this.take("word").text
    this.take("mark", ";")
    const imports: string[] = []
    const rules: Rule[] = []
    while (this.peek()) {
      const doc = this.takeDoc()
      if (!this.peek()) break
      if (this.isNext("word", "import")) imports.push(this.readImport())
      else rules.push(this.readRule(doc))
    }
    return { name, language: this.language, imports, rules }
  }

  private readImport(): string {
    this.take("word", "import")
    const { text } = this.take("rule")
    this.take("mark", ";")
    return text
  }

  private readRule(doc: string): Rule {
    const isPublic = this.isNext("word", "public")
    if (isPublic) this.take("word", "public")
    const { text: name } = this.take("rule")
    this.take("mark", "=")
    const expansion = this.readChoice()
    this.take("mark", ";")
    const lines = doc.split("\n").map((line) => line.replace(/^\s*\*?\s?/, "").trim())
    return {
      name,
      isPublic,
      about: lines.filter((line) => line && !line.startsWith("@")).join(" "),
      examples: lines
        .filter((line) => line.startsWith("@example "))
        .map((line) => line.slice("@example ".length).trim()),
      expansion,
    }
  }

  private readChoice(): Expansion {
    const items: Expansion[] = []
    const weights: number[] = []
    do {
      if (items.length > 0) this.take("mark", "|")
      weights.push(this.peek()?.kind === "weight" ? Number(this.take("weight").text) : 1)
      items.push(this.readSequence())
    } while (this.isNext("mark", "|"))
    if (items.length === 1) return items[0]!
    return { type: "choice", items, weights: weights.some((weight) => weight !== 1) ? weights : null }
  }

  private readSequence(): Expansion {
    const items: Expansion[] = []
    while (this.peek() && !this.isNext("mark", "|") && !this.closes()) items.push(this.readPart())
    if (items.length === 0) this.fail("an empty alternative")
    return items.length === 1 ? items[0]! : { type: "sequence", items }
  }

  private readPart(): Expansion {
    let part = this.readAtom()
    for (;;) {
      if (this.isNext("mark", "*") || this.isNext("mark", "+")) {
        part = { type: "repeat", item: part, least: this.take("mark").text === "*" ? 0 : 1 }
      } else if (this.peek()?.kind === "tag") {
        const tags: string[] = []
        while (this.peek()?.kind === "tag") tags.push(this.take("tag").text.trim())
        part = { type: "tagged", item: part, tags }
      } else return part
    }
  }

  private readAtom(): Expansion {
    const token = this.peek()
    if (token?.kind === "word") return { type: "word", word: this.take("word").text }
    if (token?.kind === "rule") return { type: "ref", rule: this.take("rule").text }
    if (this.isNext("mark", "(")) return this.readInside("(", ")")
    if (this.isNext("mark", "[")) return { type: "optional", item: this.readInside("[", "]") }
    return this.fail("a word, a rule or a group was expected")
  }

  private readInside(open: string, close: string): Expansion {
    this.take("mark", open)
    const inner = this.readChoice()
    this.take("mark", close)
    return inner
  }

  private closes(): boolean {
    return [")", "]", ";"].some((mark) => this.isNext("mark", mark))
  }

  private takeDoc(): string {
    let doc = ""
    while (this.peek()?.kind === "doc") doc = this.take("doc").text
    return doc
  }

  private skipDocs(): void {
    this.takeDoc()
  }

  private peek(): JsgfToken | undefined {
    return this.tokens[this.at]
  }

  private isNext(kind: JsgfToken["kind"], text: string): boolean {
    const token = this.peek()
    return token?.kind === kind && token.text === text
  }

  private take(kind: JsgfToken["kind"], text?: string): JsgfToken {
    const token = this.peek()
    if (!token || token.kind !== kind || (text !== undefined && token.text !== text))
      this.fail(`${text ?? kind} was expected`)
    this.at += 1
    return token!
  }

  private fail(problem: string): never {
    throw new GrammarError(this.file, (this.peek() ?? this.tokens.at(-1))?.line ?? 1, problem)
  }
}
