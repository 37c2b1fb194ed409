/**
 * Finds where rules match in a row of words. Every rule is tried at most once at each place (a packrat table), and an
 * alternative is only entered when its first words allow it, so the time is bounded by rules times words.
 * Where one rule reaches the same place in two ways, the reading with less doubt wins, then the one written first.
 */
import { compileRules, type Node } from "./compileRules"
import type { GrammarSet } from "./linkGrammars"
import type { Match, PlacedTag, WordRow } from "./WordRow"

interface TagList {
  tag: PlacedTag
  before: TagList | null
}

interface Path {
  end: number
  tags: TagList | null
  doubt: number
}

type RuleMatch = (rule: string, at: number) => readonly Path[]

/** How many skippable words in a row may stand inside a phrase. */
const longestSkip = 3

export class GrammarMatcher {
  private readonly nodes: ReadonlyMap<string, Node>

  /** `givenRules` are full names of rules that the caller reads itself in text. */
  constructor(
    readonly set: GrammarSet,
    givenRules: ReadonlySet<string>,
  ) {
    this.nodes = compileRules(set, givenRules)
  }

  /** Whether the rule can begin at this place at all: a quick look before a match is tried. */
  mayBegin(rule: string, at: number, row: WordRow): boolean {
    const first = this.nodes.get(rule)?.first
    return first ? canBegin(first, at, row) : true
  }

  /** A session over one row of words, with its own table. */
  over(row: WordRow): { match(rule: string, at: number): readonly Match[] } {
    const table = new Map<string, readonly Path[][]>()
    const rowTable = (rule: string): Path[][] => {
      const known = table.get(rule)
      if (known) return known as Path[][]
      const fresh: Path[][] = []
      table.set(rule, fresh)
      return fresh
    }
    const matchRule = (rule: string, at: number): readonly Path[] => {
      const places = rowTable(rule)
      const known = places[at]
      if (known) return known
      const given = row.given(rule, at)
      const found = given
        ? given.map((one) => ({ end: one.end, tags: listOf(one.tags), doubt: 0 }))
        : this.matchNode(this.nodes.get(rule)!, at, row, matchRule)
      places[at] = [...found]
      return found
    }
    return {
      match: (rule, at) =>
        matchRule(rule, at).map((path) => ({ end: path.end, tags: arrayOf(path.tags), doubt: path.doubt })),
    }
  }

  private matchNode(node: Node, at: number, row: WordRow, matchRule: RuleMatch): readonly Path[] {
    if (node.first && !canBegin(node.first, at, row)) return []
    const { expansion } = node
    switch (expansion.type) {
      case "word":
        return matchWord(expansion.word, at, row)
      case "ref":
        return matchRule(expansion.rule, at)
      case "choice":
        return this.matchChoice(node, at, row, matchRule)
      case "sequence": {
        let paths: readonly Path[] = [{ end: at, tags: null, doubt: 0 }]
        for (const part of node.parts) {
          paths = this.extend(at, paths, part, row, matchRule)
          if (paths.length === 0) return []
        }
        return paths
      }
      case "optional":
        return best([...this.matchNode(node.parts[0]!, at, row, matchRule), { end: at, tags: null, doubt: 0 }])
      case "repeat": {
        const all: Path[] = expansion.least === 0 ? [{ end: at, tags: null, doubt: 0 }] : []
        let edge: readonly Path[] = [{ end: at, tags: null, doubt: 0 }]
        while (edge.length > 0) {
          edge = this.extend(at, edge, node.parts[0]!, row, matchRule).filter(
            (path) => !all.some((known) => known.end === path.end),
          )
          all.push(...edge)
        }
        return best(all)
      }
      case "tagged":
        return this.matchNode(node.parts[0]!, at, row, matchRule).map((path) => ({
          ...path,
          tags: expansion.tags.reduce<TagList | null>(
            (before, text) => ({ tag: { text, from: at, to: path.end }, before }),
            path.tags,
          ),
        }))
    }
  }

  private matchChoice(node: Node, at: number, row: WordRow, matchRule: RuleMatch): readonly Path[] {
    const found: Path[] = []
    for (const part of alternativesAt(node, at, row))
      found.push(...this.matchNode(node.parts[part]!, at, row, matchRule))
    return best(found)
  }

  private extend(
    start: number,
    paths: readonly Path[],
    part: Node,
    row: WordRow,
    matchRule: RuleMatch,
  ): readonly Path[] {
    const longer: Path[] = []
    for (const path of paths)
      for (const next of this.continueFrom(start, path.end, part, row, matchRule))
        longer.push({
          end: next.end,
          tags: next.tags ? joinTags(path.tags, next.tags) : path.tags,
          doubt: Math.max(path.doubt, next.doubt),
        })
    return best(longer)
  }

  /** Matches at the place itself or, inside a phrase, behind words that may be stepped over. An edge ends a phrase. */
  private continueFrom(start: number, end: number, part: Node, row: WordRow, matchRule: RuleMatch): readonly Path[] {
    const empty: readonly Path[] = part.nullable ? [{ end, tags: emptyTags(part, end), doubt: 0 }] : []
    const inside = end > start
    for (let from = end; from <= end + longestSkip; from += 1) {
      if (inside && row.isEdge(from)) return empty
      const real = this.matchNode(part, from, row, matchRule).filter((path) => path.end > from)
      if (real.length > 0) return [...real, ...empty]
      if (!inside || from >= row.length || !row.isSkippable(from)) return empty
    }
    return empty
  }
}

/** A tag on a part that may be left out holds even when it is left out, as a tag on the phrase would. */
function emptyTags(node: Node, at: number): TagList | null {
  if (node.expansion.type !== "tagged") return null
  return listOf(node.expansion.tags.map((text) => ({ text, from: at, to: at })))
}

function canBegin(first: ReadonlySet<string>, at: number, row: WordRow): boolean {
  return at < row.length && row.forms[at]!.some((form) => first.has(form.word))
}

/** Alternatives that can begin here, in the order they were written. */
function alternativesAt(node: Node, at: number, row: WordRow): readonly number[] {
  const forms = at < row.length ? row.forms[at]! : []
  const lists = forms.flatMap((form) => node.byFirst?.get(form.word) ?? [])
  if (node.open.length === 0 && forms.length === 1) return lists
  return [...new Set([...lists, ...node.open])].sort((one, other) => one - other)
}

function matchWord(word: string, at: number, row: WordRow): readonly Path[] {
  if (at >= row.length) return []
  const form = row.forms[at]!.find((one) => one.word === word)
  return form ? [{ end: at + 1, tags: null, doubt: form.doubt }] : []
}

function best(paths: readonly Path[]): readonly Path[] {
  if (paths.length < 2) return paths
  const kept = new Map<number, Path>()
  for (const path of paths) {
    const rival = kept.get(path.end)
    if (!rival || path.doubt < rival.doubt) kept.set(path.end, path)
  }
  return [...kept.values()]
}

function joinTags(before: TagList | null, after: TagList): TagList {
  return { tag: after.tag, before: after.before ? joinTags(before, after.before) : before }
}

const listOf = (tags: readonly PlacedTag[]) => tags.reduce<TagList | null>((before, tag) => ({ tag, before }), null)

function arrayOf(list: TagList | null): PlacedTag[] {
  const tags: PlacedTag[] = []
  for (let one = list; one; one = one.before) tags.push(one.tag)
  return tags.reverse()
}
