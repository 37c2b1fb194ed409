/**
 * A rule is data, one pure function and its own examples. It looks only at the values named in `needs`, so that it is
 * known without running it which values could change its mind, and which are missing.
 */
import { z } from "zod"
import type { Finding, Severity, Source, Status, Working } from "../facts/Finding"
import type { ItemKind } from "./itemKind"
import type { ValueName } from "./namedValues"

/** What a rule has to say: both sentences, and the sum behind them. */
export interface Says {
  spoken: string
  shown: string
  inputs?: Finding["inputs"]
  working?: Working
  /** Tells findings of one rule apart, such as "below" and "above" a band. */
  which?: string
  /** Where the figure used is known less well than the rule's. */
  status?: Status
  /** Values that would make the answer surer although there is one already. */
  wants?: readonly ValueName[]
}

export type Verdict =
  | ({ verdict: "passes" } & Says)
  | ({ verdict: "fails"; severity: Exclude<Severity, "ok"> } & Says)
  | { verdict: "notApplicable"; because: string }
  | { verdict: "asks"; missing: readonly ValueName[] }

export const passes = (says: Says): Verdict => ({ verdict: "passes", ...says })
export const fails = (severity: Exclude<Severity, "ok">, says: Says): Verdict => ({
  verdict: "fails",
  severity,
  ...says,
})
export const notApplicable = (because: string): Verdict => ({ verdict: "notApplicable", because })
export const asks = (...missing: ValueName[]): Verdict => ({ verdict: "asks", missing })

/** Any of the values a rule may be given, by name. */
export type Values = Partial<Record<ValueName, unknown>>

/** A worked case that is run as a test and shown beside the rule. */
export interface Example {
  given: Values
  verdict: Verdict["verdict"]
  severity?: Severity
  which?: string
}

export interface Rule {
  name: string
  /** One plain sentence that says what the rule wants. */
  title: string
  source: Source
  status: Status
  /** Which items it is judged for; `job` once for the whole job. */
  of: readonly (ItemKind | "job")[]
  /** Names of the values it looks at. */
  needs: readonly ValueName[]
  limits: Readonly<Record<string, number | string>>
  /** Asks for what is missing, else judges. Values it does not need are passed over. */
  judge(values: Values): Verdict
  examples: readonly Example[]
}

interface Definition<Shape extends z.ZodRawShape, Limits extends Rule["limits"]>
  extends Pick<Rule, "name" | "title" | "source" | "status" | "of" | "examples"> {
  needs: z.ZodObject<Shape>
  limits: Limits
  judge(given: z.infer<z.ZodObject<Shape>>, limits: Limits): Verdict
}

/**
 * Makes a rule ask for missing values by itself, and turns a verdict on a figure from memory into a note. Values were
 * checked where they came in and are not checked again: the schema says which are needed, and of what type they are.
 */
export const defineRule = <Shape extends z.ZodRawShape, const Limits extends Rule["limits"]>(
  definition: Definition<Shape, Limits>,
): Rule => {
  const { needs: schema, judge, limits, status, ...rest } = definition
  const needs = Object.keys(schema.shape) as ValueName[]
  const wanted = needs.filter((name) => !z.safeParse(schema.shape[name as string] as z.ZodType, undefined).success)
  return {
    ...rest,
    status,
    limits,
    needs,
    judge(values) {
      const missing = wanted.filter((name) => values[name] === undefined)
      if (missing.length > 0) return asks(...missing)
      return distrust(judge(values as z.infer<typeof schema>, limits), status)
    },
  }
}

/** A figure that was only remembered cannot pass or fail anything: it is a reason to open the book. */
const distrust = (verdict: Verdict, status: Status): Verdict => {
  if (verdict.verdict !== "passes" && verdict.verdict !== "fails") return verdict
  if ((verdict.status ?? status) !== "memory") return verdict
  const shown = `${verdict.shown} The figure is from memory: look it up in the book before it decides anything.`
  return { ...verdict, verdict: "fails", severity: "note", shown, status: "memory" }
}
