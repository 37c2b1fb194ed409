/**
 * The manifest says what browsers ask for before they offer to install a page: a name, a start inside the scope, a
 * display of its own, and pictures of 192 and 512 pixels. Source: the W3C Web Application Manifest for the members, and
 * the installability list at web.dev/articles/install-criteria for which are needed.
 */
import { readFileSync } from "node:fs"
import { expect, test } from "vitest"

interface Icon {
  src: string
  type: string
  sizes: string
  purpose: string
}

const manifest = JSON.parse(readFileSync("src/app/bothhands.webmanifest", "utf8")) as Record<string, unknown> & {
  icons: Icon[]
}

/** Width and height from the header chunk of a PNG file (ISO/IEC 15948, 11.2.2). */
const pngSize = (path: string) => {
  const file = readFileSync(path)
  expect(file.subarray(1, 4).toString("latin1")).toBe("PNG")
  return `${file.readUInt32BE(16)}x${file.readUInt32BE(20)}`
}

test("the manifest has what installing asks for", () => {
  expect(manifest).toMatchObject({ name: "Bothhands", short_name: "Bothhands", display: "standalone" })
  const page = "https://here.example/some/folder/index.html"
  const at = (member: string) => new URL(manifest[member] as string, page).href
  expect(at("start_url").startsWith(at("scope"))).toBe(true)
  for (const colour of ["theme_color", "background_color"]) expect(manifest[colour]).toMatch(/^#[0-9a-f]{6}$/)
})

test("its pictures are there, of the sizes it says", () => {
  for (const { src, sizes, type } of manifest.icons) {
    expect(type).toBe("image/png")
    expect(pngSize(`src/app/${src}`)).toBe(sizes)
  }
  const kinds = manifest.icons.map(({ sizes, purpose }) => `${sizes} ${purpose}`)
  expect(kinds).toEqual(expect.arrayContaining(["192x192 any", "512x512 any", "512x512 maskable"]))
})
