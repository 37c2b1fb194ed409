/**
 * Stands in for the test library while mutants are tried: the very same test files run, in this process and without
 * reports, until one fails. It knows the few matchers that the tests of the rules use, and throws on any other.
 */
import { isDeepStrictEqual } from "node:util"

type Run = () => unknown
const registered: Run[] = []

/** Everything that was registered since the last call. */
export const takeTests = (): Run[] => registered.splice(0)

const each =
  <T>(register: (name: string, run: (...row: unknown[]) => unknown) => void) =>
  (rows: readonly T[]) =>
  (name: string, run: (...row: unknown[]) => unknown) => {
    for (const row of rows) register(name, () => (Array.isArray(row) ? run(...row) : run(row)))
  }

const addTest = (_name: string, run: Run) => void registered.push(run)
export const test = Object.assign(addTest, { each: each(addTest) })
const open = (_name: string, run: Run) => void run()
export const describe = Object.assign(open, { each: each(open) })

class Pattern {
  constructor(readonly matches: (value: unknown) => boolean) {}
}

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === "object" && value !== null
/** As the library has it: a property that is undefined counts as absent. */
const withoutUndefined = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(withoutUndefined)
  if (!isObject(value)) return value
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, one]) => (one === undefined ? [] : [[key, withoutUndefined(one)]])),
  )
}
const isEqual = (got: unknown, want: unknown) => isDeepStrictEqual(withoutUndefined(got), withoutUndefined(want))
const holds = (got: unknown, want: unknown): boolean => {
  if (want instanceof Pattern) return want.matches(got)
  if (Array.isArray(want))
    return Array.isArray(got) && got.length === want.length && want.every((one, at) => holds(got[at], one))
  if (isObject(want)) return isObject(got) && Object.entries(want).every(([key, one]) => holds(got[key], one))
  return Object.is(got, want)
}

const matchers: Record<string, (...given: never[]) => boolean> = {
  toBe: (got: unknown, want: unknown) => Object.is(got, want),
  toEqual: isEqual,
  toMatchObject: holds,
  toBeUndefined: (got: unknown) => got === undefined,
  toContain: (got: string | unknown[], want: unknown) => (got as unknown[]).includes(want),
  toContainEqual: (got: unknown[], want: unknown) => got.some((one) => isEqual(one, want)),
  toHaveLength: (got: { length: number }, want: number) => got.length === want,
  toMatch: (got: string, want: RegExp) => want.test(got),
  toBeCloseTo: (got: number, want: number, places = 2) => Math.abs(got - want) < 10 ** -places / 2,
  toBeGreaterThan: (got: number, want: number) => got > want,
  toBeGreaterThanOrEqual: (got: number, want: number) => got >= want,
  toBeLessThan: (got: number, want: number) => got < want,
  toBeLessThanOrEqual: (got: number, want: number) => got <= want,
}

const asserting = (got: unknown, isTurned: boolean): Record<string, unknown> =>
  new Proxy(
    {},
    {
      get(_target, name: string) {
        if (name === "not") return asserting(got, !isTurned)
        const matcher = matchers[name]
        if (!matcher) throw new Error(`The quick tests do not know ${name}`)
        return (...want: never[]) => {
          if (matcher(got as never, ...want) === isTurned) throw new Failed(name)
        }
      },
    },
  )

/** A test that noticed something. */
export class Failed extends Error {}

export const expect = Object.assign((got: unknown) => asserting(got, false), {
  stringContaining: (part: string) => new Pattern((value) => String(value).includes(part)),
})
