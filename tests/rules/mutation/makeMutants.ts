/**
 * Lists every small change worth trying: each figure moved by one step of its last digit either way, each comparison
 * turned and moved over its limit, each sum and each least or most swapped. Examples are the tests, so they stay.
 */
import { readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { parseSync } from "oxc-parser"
import type { Mutant } from "./Mutant"

interface Node {
  type: string
  start: number
  end: number
  [key: string]: unknown
}
const isNode = (value: unknown): value is Node => typeof value === "object" && value !== null && "type" in value

const swaps: Readonly<Record<string, readonly string[]>> = {
  "<": ["<=", ">="],
  "<=": ["<", ">"],
  ">": [">=", "<="],
  ">=": [">", "<"],
  "===": ["!=="],
  "!==": ["==="],
  "+": ["-"],
  "-": ["+"],
  "*": ["/"],
  "/": ["*"],
  "**": ["*"],
}
const calls: Readonly<Record<string, string>> = {
  min: "max",
  max: "min",
  ceil: "floor",
  floor: "ceil",
  some: "every",
  every: "some",
}

/** The number one step of its last digit away: 0.05 gives 0.06 and 0.04, 600 gives 601 and 599. */
const stepped = (raw: string): string[] => {
  if (raw.includes("e")) return [String(Number(raw) * 10), String(Number(raw) / 10)]
  const places = raw.split(".")[1]?.length ?? 0
  const step = 10 ** -places
  return [Number(raw) + step, Number(raw) - step].map((value) => value.toFixed(places))
}

const isText = (node: unknown): boolean =>
  isNode(node) &&
  (node.type === "TemplateLiteral" ||
    (node.type === "Literal" && typeof node.value === "string") ||
    (node.type === "BinaryExpression" && (isText(node.left) || isText(node.right))))

/** Places in a text and what to put there. */
type Edit = [start: number, end: number, becomes: string]

const editsOf = (node: Node, text: string): Edit[] => {
  if (node.type === "Literal" && typeof node.value === "number")
    return stepped(text.slice(node.start, node.end)).map((becomes) => [node.start, node.end, becomes])
  if (node.type === "BinaryExpression" && !isText(node)) {
    const [left, right] = [node.left as Node, node.right as Node]
    const at = text.indexOf(String(node.operator), left.end)
    const others = at < right.start ? (swaps[String(node.operator)] ?? []) : []
    return others.map((becomes) => [at, at + String(node.operator).length, becomes])
  }
  if (node.type === "CallExpression" && isNode(node.callee) && node.callee.type === "MemberExpression") {
    const property = node.callee.property as Node
    const other = calls[String(property.name)]
    return other === undefined ? [] : [[property.start, property.end, other]]
  }
  return []
}

const isExamples = (node: Node) => node.type === "Property" && isNode(node.key) && node.key.name === "examples"
/** Types and import lines are not code that runs. */
const isSkipped = (node: Node) =>
  node.type.startsWith("TS") && !/^TS(AsExpression|NonNullExpression|SatisfiesExpression)$/.test(node.type)

const walk = (node: Node, text: string): Edit[] => {
  if (isExamples(node) || isSkipped(node)) return []
  const children = Object.values(node).flat().filter(isNode)
  return [...editsOf(node, text), ...children.flatMap((child) => walk(child, text))]
}

const mutantsOf = (file: string): Mutant[] => {
  const text = readFileSync(file, "utf8")
  const program = parseSync(file, text).program as unknown as Node
  return walk(program, text).map(([start, end, becomes]) => ({
    file,
    line: text.slice(0, start).split("\n").length,
    was: text.slice(start, end),
    becomes,
    text: text.slice(0, start) + becomes + text.slice(end),
  }))
}

/** All mutants of a folder, in the order of files and lines. */
export const makeMutants = (folder: string): Mutant[] =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .sort()
    .flatMap((name) => mutantsOf(join(folder, name)))
