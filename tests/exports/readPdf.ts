/**
 * A PDF as pdf.js (through unpdf) reads it: its own metadata, and its text by the tags that a screen reader would follow.
 * What no tag leads to, such as feet and repeated heads, is kept apart.
 */
import { getDocumentProxy } from "unpdf"

type Proxy = Awaited<ReturnType<typeof getDocumentProxy>>
type Page = Awaited<ReturnType<Proxy["getPage"]>>
interface TreeNode {
  role?: string
  alt?: string
  type?: string
  id?: string
  children?: TreeNode[]
}

export interface ReadBlock {
  /** "H1", "P", "LBody", "TR" or "Figure". */
  role: string
  page: number
  /** The nearest heading above, without its own level. */
  under: string
  text: string
  /** Of a table's row. */
  cells: string[]
  /** Of a figure. */
  alt: string
}

export interface ReadPdf {
  pages: number
  title: string
  lang: string | null
  marked: boolean
  blocks: ReadBlock[]
  /** All text of each page in the order it was drawn, tagged or not. */
  drawn: string[]
}

/** Text by the id of its piece, and all text. */
const textsOf = async (page: Page) => {
  const { items } = await page.getTextContent({ includeMarkedContent: true })
  const byId = new Map<string, string>()
  const open: (string | undefined)[] = []
  let drawn = ""
  for (const item of items) {
    if ("str" in item) {
      const id = open.findLast((one) => one !== undefined)
      const str = item.hasEOL ? `${item.str} ` : item.str
      if (id) byId.set(id, (byId.get(id) ?? "") + str)
      drawn += `${item.str} `
    } else if (item.type === "endMarkedContent") open.pop()
    else open.push(item.id)
  }
  return { byId, drawn }
}

const joinText = (node: TreeNode, byId: ReadonlyMap<string, string>): string =>
  node.type === "content"
    ? (byId.get(node.id ?? "") ?? "")
    : (node.children ?? []).map((child) => joinText(child, byId)).join("")

/** Every stretch of white space is one space: pdf.js puts its own where it sees a gap. */
const textOf = (node: TreeNode, byId: ReadonlyMap<string, string>): string =>
  joinText(node, byId).replaceAll(/\s+/g, " ").trim()

const leaves = new Set(["H1", "H2", "H3", "P", "LBody", "TR", "Figure"])

const walk = (node: TreeNode, take: (node: TreeNode) => void): void => {
  if (leaves.has(node.role ?? "")) take(node)
  else for (const child of node.children ?? []) walk(child, take)
}

const figuresIn = (node: TreeNode): TreeNode[] =>
  (node.children ?? []).flatMap((child) => (child.role === "Figure" ? [child] : figuresIn(child)))

/** Reads the bytes of a PDF. */
export const readPdf = async (bytes: Uint8Array): Promise<ReadPdf> => {
  const document = await getDocumentProxy(bytes.slice())
  const { info } = await document.getMetadata()
  const { Title, Language } = info as { Title: string; Language: string | null }
  const blocks: ReadBlock[] = []
  const drawn: string[] = []
  let under = ""
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number)
    const texts = await textsOf(page)
    drawn.push(texts.drawn)
    const tree = (await page.getStructTree()) as TreeNode | null
    if (!tree) continue
    walk(tree, (node) => {
      const text = textOf(node, texts.byId)
      const role = node.role!
      const cells = role === "TR" ? (node.children ?? []).map((cell) => textOf(cell, texts.byId)) : []
      const alt =
        node.alt ??
        figuresIn(node)
          .map((figure) => figure.alt ?? "")
          .join(" ")
      // A table that runs over pages has all its rows in the tree of each of them; those of other pages are empty there.
      if (text === "" && role !== "Figure") return
      blocks.push({ role, page: number, under, text, cells, alt })
      if (/^H\d$/.test(role)) under = text
    })
  }
  const marked = ((await document.getMarkInfo()) as { Marked?: boolean } | null)?.Marked === true
  return { pages: document.numPages, title: Title, lang: Language, marked, blocks, drawn }
}
