/**
 * The page's files on this device, by what is in them and not by where they came from: a file that a newer version has
 * unchanged is not fetched again, and bytes that are not the expected ones are never kept nor served.
 */
import type { KeptFile } from "./KeptFile"

export const cacheName = "bothhands-content"

export interface FileKeeperParts {
  files: readonly KeptFile[]
  /** Absolute address of the page's folder, with a slash at its end. */
  scope: string
  caches: Pick<CacheStorage, "open">
  fetchFile: (address: string, init: RequestInit) => Promise<Response>
}

const sha256 = async (bytes: ArrayBuffer): Promise<string> =>
  [...new Uint8Array(await crypto.subtle.digest("SHA-256", bytes))].map((n) => n.toString(16).padStart(2, "0")).join("")

export class FileKeeper {
  private readonly byPath: ReadonlyMap<string, KeptFile>

  constructor(private readonly parts: FileKeeperParts) {
    this.byPath = new Map(parts.files.map((file) => [file.path, file]))
  }

  /** The file at an address, if it is one of ours; the page's folder itself means its start page. */
  fileAt(address: string): KeptFile | undefined {
    const url = new URL(address)
    const place = url.origin + url.pathname
    if (!place.startsWith(this.parts.scope)) return undefined
    return this.byPath.get(decodeURI(place.slice(this.parts.scope.length)) || "index.html")
  }

  /** Fetches what is not here yet, one after the other, so that a page that is starting is not held up. Throws. */
  async fill(): Promise<void> {
    for (const file of this.parts.files) {
      if (file.kept === "start" && !(await this.find(file))) await this.take(file)
    }
  }

  /** Throws away what no file of this version has in it. */
  async clear(): Promise<void> {
    const cache = await this.open()
    const known = new Set(this.parts.files.map((file) => this.keyOf(file)))
    for (const { url } of await cache.keys()) if (!known.has(url)) await cache.delete(url)
  }

  /** From the device, else from the network and then kept. Throws where neither has it. */
  async answer(file: KeptFile): Promise<Response> {
    return (await this.find(file)) ?? this.take(file)
  }

  private open(): Promise<Cache> {
    return this.parts.caches.open(cacheName)
  }

  private keyOf(file: KeptFile): string {
    // The type that a file is served as comes from its ending, so equal bytes under two endings are two files.
    return `${this.parts.scope}kept/${file.hash}${/\.\w+$/.exec(file.path)?.[0] ?? ""}`
  }

  private async find(file: KeptFile): Promise<Response | undefined> {
    return (await this.open()).match(this.keyOf(file))
  }

  private async take(file: KeptFile): Promise<Response> {
    // The browser may have just fetched it for the page. Only where that is another version's, the server is asked.
    for (const cache of ["default", "reload"] as const) {
      const answer = await this.parts.fetchFile(this.parts.scope + encodeURI(file.path), { cache })
      const bytes = await answer.arrayBuffer()
      if (!answer.ok || (await sha256(bytes)) !== file.hash) continue
      const type = answer.headers.get("content-type") ?? "application/octet-stream"
      const kept = new Response(bytes, { headers: { "content-type": type } })
      await (await this.open()).put(this.keyOf(file), kept.clone())
      return kept
    }
    throw new Error(`${file.path} on the server is not this version's`)
  }
}
