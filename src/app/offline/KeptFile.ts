/** One file of the built page as the service worker knows it. */
export interface KeptFile {
  /** Address below the page, such as `assets/index-1a2b.js`. */
  path: string
  /** SHA-256 of the content, hexadecimal. */
  hash: string
  /** `start`: kept on the first visit; `use`: kept once somebody asked for it. */
  kept: "start" | "use"
}
