/** How the report looks: sizes in points, colours dark enough to be read on paper and in a black-and-white copy. */

export const look = {
  page: { width: 595.28, height: 841.89, side: 46, top: 48, bottom: 54 },
  ink: "#14201a",
  quiet: "#46534b",
  edge: "#a5aaa2",
  faint: "#dcddd6",
  panel: "#f4f2ec",
  stop: "#a3200a",
  wait: "#735400",
  go: "#1d6b2c",
  copper: "#9a5526",
  wire: "#23833f",
  stripe: "#f6dc3a",
  white: "#ffffff",
} as const

/** Letters of a piece of text. */
export interface Style {
  bold?: boolean
  /** In points. */
  size: number
  colour: string
}

export const styles = {
  h1: { bold: true, size: 18, colour: look.ink },
  h2: { bold: true, size: 12.5, colour: look.ink },
  h3: { bold: true, size: 10, colour: look.ink },
  text: { size: 9, colour: look.ink },
  loud: { bold: true, size: 9, colour: look.stop },
  quiet: { size: 8, colour: look.quiet },
  head: { bold: true, size: 8, colour: look.quiet },
  cell: { size: 8.5, colour: look.ink },
  rowHead: { bold: true, size: 8.5, colour: look.ink },
  under: { size: 7.5, colour: look.quiet },
} as const satisfies Record<string, Style>

/** Height of a line in points. */
export const lineHeight = ({ size }: Style): number => size * 1.32
