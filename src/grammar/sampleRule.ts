/** Makes up sentences that a rule allows. Randomness comes from outside, so that a sample can be had again. */
import type { Expansion } from "./Expansion"
import type { GrammarSet } from "./linkGrammars"

/** One sentence of `root` (a full name). `random` gives numbers from 0 up to but not 1; weights are honoured. */
export function sampleRule(set: GrammarSet, root: string, random: () => number): string {
  const words: string[] = []
  const visit = (expansion: Expansion): void => {
    switch (expansion.type) {
      case "word":
        words.push(expansion.word)
        break
      case "ref":
        visit(set.get(expansion.rule)!.expansion)
        break
      case "sequence":
        for (const item of expansion.items) visit(item)
        break
      case "choice":
        visit(expansion.items[pick(expansion.weights ?? expansion.items.map(() => 1), random)]!)
        break
      case "optional":
        if (random() < 0.5) visit(expansion.item)
        break
      case "repeat":
        for (let more = expansion.least === 1 || random() < 0.5; more; more = random() < 0.3) visit(expansion.item)
        break
      case "tagged":
        visit(expansion.item)
    }
  }
  visit(set.get(root)!.expansion)
  return words.join(" ")
}

function pick(weights: readonly number[], random: () => number): number {
  let left = random() * weights.reduce((sum, weight) => sum + weight, 0)
  for (let at = 0; at < weights.length; at += 1) {
    left -= weights[at]!
    if (left < 0) return at
  }
  return weights.length - 1
}
