/**
 * The front door: from a grammar folder to something that reads words. What the alternatives of an ear disagree about
 * in a number is asked, however sure the first of them looks.
 */
import type { EarGrammar } from "../facts/EarGrammar"
import type { Fact } from "../facts/Fact"
import type { Heard } from "../facts/Heard"
import type { Context, Interpretation } from "../facts/Interpretation"
import { measureGrammar } from "../grammar/measureGrammar"
import { buildEarGrammar, earRoot } from "./buildEarGrammar"
import { type Explanation, explainText } from "./explainText"
import { type GrammarFiles, type GrammarFolder, readGrammarFolder } from "./GrammarFolder"
import { hideOwnParts } from "./hideOwnParts"
import { interpretText } from "./interpretText"
import { openLanguage } from "./Language"

export interface Interpreter {
  /** Never throws. Text beyond `longestText` is refused with a question. */
  interpret(heard: Heard | string, context?: Context): Interpretation
  earGrammar(context?: Context): EarGrammar
  /** Why a text was read so, for people. */
  explain(text: string, context?: Context): Explanation
}

/** Characters of one utterance that are looked at; a minute of fast speech is about 1,000. */
export const longestText = 1500
/** Other readings of the sound that are compared. */
const mostAlternatives = 4

/**
 * Reads the grammar files once. Throws only when they are broken. They are compiled when the first text is read: an ear
 * wants its grammar before that, and a page its first screen.
 */
export function createInterpreter(files: GrammarFiles): Interpreter {
  const folder = readGrammarFolder(files)
  const compile = () => ({ language: openLanguage(folder), own: wordsOf(folder) })
  let compiled: ReturnType<typeof compile> | null = null
  const earGrammars = new Map<string, EarGrammar>()
  const read = (text: string, context: Context): Interpretation => {
    if (text.length > longestText) return tooLong()
    compiled ??= compile()
    const { language, own } = compiled
    const hidden = hideOwnParts(text, context, (word) => own.has(word))
    return hidden
      ? hidden.show(interpretText(hidden.text, hidden.context, language))
      : interpretText(text, context, language)
  }
  return {
    interpret(heard, context = {}) {
      const text = typeof heard === "string" ? heard : heard.text
      const first = read(text, context)
      if (typeof heard === "string" || (first.facts.length === 0 && !first.ask?.isSameAgain)) return first
      const others = heard.alternatives.slice(0, mostAlternatives).filter((one) => one !== text)
      const readings = others.map((other) => read(other, context))
      return first.ask?.isSameAgain ? withRival(first, readings) : readings.reduce(withoutDisagreement, first)
    },
    earGrammar: (context) => {
      const root = earRoot(context)
      const known = earGrammars.get(root) ?? buildEarGrammar(folder, { ...context, misheard: undefined })
      earGrammars.set(root, known)
      return context?.misheard ? { ...known, unlikely: context.misheard } : known
    },
    explain: (text, context = {}) => {
      compiled ??= compile()
      return explainText(text.slice(0, longestText), context, compiled.language)
    },
  }
}

/** Every word that some phrase or word list gives a meaning to. */
const wordsOf = ({ set, lists }: GrammarFolder): ReadonlySet<string> => {
  const inPhrases = [...set.keys()].flatMap((rule) => measureGrammar(set, rule).words)
  return new Set([...inPhrases, ...[...lists.values()].flatMap((words) => [...words])])
}

const tooLong = (): Interpretation => ({
  facts: [],
  ask: { kind: "field", because: "that was too long to take in at once" },
  command: null,
})

const isNumber = (fact: Fact): fact is Fact & { value: number } => typeof fact.value === "number"

/** Takes back a number that another reading of the same sound has otherwise. */
function withoutDisagreement(first: Interpretation, other: Interpretation): Interpretation {
  const rival = (fact: Fact) =>
    other.facts.find(
      (one) => one.kind === fact.kind && fieldOf(one) === fieldOf(fact) && isNumber(one) && one.value !== fact.value,
    )
  const doubted = first.facts.find((fact) => isNumber(fact) && rival(fact))
  if (!doubted) return first
  const kind = doubted.kind === "correct" ? doubted.field : doubted.kind
  const candidates = [doubted.value, rival(doubted)!.value].filter((one) => typeof one === "number")
  return {
    facts: first.facts.filter((fact) => fact !== doubted),
    ask: first.ask ?? { kind, candidates, because: "it could be heard in two ways" },
    command: first.command,
  }
}

/** A repair to the very value that was read back may have been the other reading of the same sound. */
function withRival(first: Interpretation, others: readonly Interpretation[]): Interpretation {
  const { ask } = first
  const values = others.flatMap(({ facts: [only] }) =>
    ask && only?.kind === "correct" && only.field === ask.kind && isNumber(only) ? [only.value] : [],
  )
  return ask && values[0] !== undefined ? { ...first, ask: { ...ask, candidates: [values[0]] } } : first
}

const fieldOf = (fact: Fact) =>
  (fact.kind === "correct" ? fact.field : fact.kind) + ("subject" in fact ? (fact.subject ?? "") : "")
