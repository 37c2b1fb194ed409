/**
 * Finds where rules match in a row of words, with their tags. Every rule is tried at most once at each place (a packrat
 * table), and an alternative is only entered when its first words allow it, so the time is bounded by rules times words.
 * Where one rule reaches the same place in two ways, the reading with less doubt wins, then the one written first.
 */
import { compileRules, type Node } from "./compileRules"
import type { GrammarSet } from "./linkGrammars"
import { WordIds } from "./WordIds"
import type { Match, PlacedTag, WordForm, WordRow } from "./WordRow"

interface TagList {
  tag: PlacedTag
  before: TagList | null
}

interface Path {
  end: number
  tags: TagList | null
  doubt: number
}

/** How many skippable words in a row may stand inside a phrase. */
export const longestSkip = 3

const none: readonly Path[] = []

export class GrammarMatcher {
  readonly words = new WordIds()
  private readonly nodes: ReadonlyMap<string, Node>

  /** `givenRules` are full names of rules that the caller reads itself in text. */
  constructor(
    readonly set: GrammarSet,
    readonly givenRules: ReadonlySet<string>,
  ) {
    this.nodes = compileRules(set, givenRules, this.words)
  }

  /** A session over one row of words, with its own table. */
  over(row: WordRow): { match(rule: string, at: number): readonly Match[] } {
    const session = new Session(this.nodes, row)
    return {
      match: (rule, at) =>
        session.matchRule(rule, at).map((path) => ({ end: path.end, tags: arrayOf(path.tags), doubt: path.doubt })),
    }
  }
}

class Session {
  private readonly table = new Map<string, Array<readonly Path[] | undefined>>()

  constructor(
    private readonly nodes: ReadonlyMap<string, Node>,
    private readonly row: WordRow,
  ) {}

  matchRule(rule: string, at: number): readonly Path[] {
    const places = this.placesOf(rule)
    const known = places[at]
    if (known) return known
    const given = this.row.given(rule, at)
    const found = given
      ? given.map((one) => ({ end: one.end, tags: listOf(one.tags), doubt: 0 }))
      : this.match(this.nodes.get(rule)!, at)
    places[at] = found
    return found
  }

  private placesOf(rule: string): Array<readonly Path[] | undefined> {
    const known = this.table.get(rule)
    if (known) return known
    const made: Array<readonly Path[] | undefined> = []
    this.table.set(rule, made)
    return made
  }

  private match(node: Node, at: number): readonly Path[] {
    if (node.first && !canBegin(node.first, at, this.row)) return none
    switch (node.type) {
      case "word":
        return this.matchWord(node.word, at)
      case "ref":
        return this.matchRule(node.rule, at)
      case "choice":
        return this.matchChoice(node, at)
      case "sequence": {
        let paths: readonly Path[] = [{ end: at, tags: null, doubt: 0 }]
        for (const part of node.parts) {
          paths = this.extend(at, paths, part)
          if (paths.length === 0) return none
        }
        return paths
      }
      case "optional":
        return best([...this.match(node.parts[0]!, at), { end: at, tags: null, doubt: 0 }])
      case "repeat":
        return this.matchRepeat(node, at)
      case "tagged": {
        const paths = this.match(node.parts[0]!, at)
        return paths.length === 0 ? none : paths.map((path) => withTags(path, node.tags, at))
      }
    }
  }

  private matchWord(word: number, at: number): readonly Path[] {
    if (at >= this.row.length) return none
    for (const form of this.row.forms[at]!)
      if (form.word === word) return [{ end: at + 1, tags: null, doubt: form.doubt }]
    return none
  }

  private matchChoice(node: Node, at: number): readonly Path[] {
    const parts = alternativesAt(node, at < this.row.length ? this.row.forms[at]! : [])
    if (parts.length === 1) return this.match(parts[0]!, at)
    const found: Path[] = []
    for (const part of parts) for (const path of this.match(part, at)) found.push(path)
    return best(found)
  }

  private matchRepeat(node: Node, at: number): readonly Path[] {
    const empty: Path = { end: at, tags: null, doubt: 0 }
    const all: Path[] = node.least === 0 ? [empty] : []
    let edge: readonly Path[] = [empty]
    while (edge.length > 0) {
      edge = this.extend(at, edge, node.parts[0]!).filter((path) => !all.some((known) => known.end === path.end))
      all.push(...edge)
    }
    return best(all)
  }

  private extend(start: number, paths: readonly Path[], part: Node): readonly Path[] {
    const longer: Path[] = []
    for (const path of paths) this.continueFrom(start, path, part, longer)
    return best(longer)
  }

  /** Matches at the place itself or, inside a phrase, behind words that may be stepped over. An edge ends a phrase. */
  private continueFrom(start: number, path: Path, part: Node, longer: Path[]): void {
    const { end } = path
    const inside = end > start
    for (let from = end; from <= end + longestSkip; from += 1) {
      if (inside && this.row.isEdge(from)) break
      const before = longer.length
      for (const next of this.match(part, from)) if (next.end > from) longer.push(joined(path, next))
      if (longer.length > before || !inside || from >= this.row.length || !this.row.isSkippable(from)) break
    }
    if (part.nullable) longer.push(joined(path, { end, tags: emptyTags(part, end), doubt: 0 }))
  }
}

const joined = (path: Path, next: Path): Path => ({
  end: next.end,
  tags: next.tags ? joinTags(path.tags, next.tags) : path.tags,
  doubt: Math.max(path.doubt, next.doubt),
})

function withTags(path: Path, texts: readonly string[], at: number): Path {
  let { tags } = path
  for (const text of texts) tags = { tag: { text, from: at, to: path.end }, before: tags }
  return { end: path.end, tags, doubt: path.doubt }
}

/** A tag on a part that may be left out holds even when it is left out, as a tag on the phrase would. */
function emptyTags(node: Node, at: number): TagList | null {
  if (node.type !== "tagged") return null
  return listOf(node.tags.map((text) => ({ text, from: at, to: at })))
}

function canBegin(first: ReadonlySet<number>, at: number, row: WordRow): boolean {
  if (at >= row.length) return false
  for (const form of row.forms[at]!) if (first.has(form.word)) return true
  return false
}

/** Alternatives that can begin here, in the order they were written. */
function alternativesAt(node: Node, forms: readonly WordForm[]): readonly Node[] {
  let only: readonly Node[] | undefined
  let lists: Set<Node> | null = null
  for (const form of forms) {
    const list = node.byFirst.get(form.word)
    if (!list || list === only) continue
    if (!only) only = list
    else lists = new Set([...(lists ?? only), ...list])
  }
  return lists ? node.parts.filter((part) => lists.has(part)) : (only ?? node.open)
}

function best(paths: readonly Path[]): readonly Path[] {
  if (paths.length < 2 || areApart(paths)) return paths
  const kept = new Map<number, Path>()
  for (const path of paths) {
    const rival = kept.get(path.end)
    if (!rival || path.doubt < rival.doubt) kept.set(path.end, path)
  }
  return [...kept.values()]
}

/** Whether no two paths end at the same place, as is most common. */
function areApart(paths: readonly Path[]): boolean {
  for (let one = 1; one < paths.length; one += 1)
    for (let other = 0; other < one; other += 1) if (paths[one]!.end === paths[other]!.end) return false
  return true
}

function joinTags(before: TagList | null, after: TagList): TagList {
  if (!before) return after
  return { tag: after.tag, before: after.before ? joinTags(before, after.before) : before }
}

function listOf(tags: readonly PlacedTag[]): TagList | null {
  let list: TagList | null = null
  for (const tag of tags) list = { tag, before: list }
  return list
}

function arrayOf(list: TagList | null): PlacedTag[] {
  const tags: PlacedTag[] = []
  for (let one = list; one; one = one.before) tags.push(one.tag)
  return tags.reverse()
}
