/** The few line icons of the buttons, on a 24 by 24 field. Each stands beside a word, so it is hidden from readers. */

export type IconName =
  | "yes"
  | "no"
  | "undo"
  | "again"
  | "left"
  | "all"
  | "send"
  | "ear"
  | "earOff"
  | "voice"
  | "file"
  | "leave"
  | "play"
  | "picture"
  | "findings"
  | "sign"
  | "settings"
  | "phone"
  | "lesson"
  | "back"

const lines: Record<IconName, string> = {
  yes: "M4 13l5.5 5.5L20 6.5",
  no: "M5.5 5.5l13 13 M18.5 5.5l-13 13",
  undo: "M9 5L4 10l5 5 M4 10h10a5.5 5.5 0 0 1 0 11h-4",
  again: "M19.5 9A8 8 0 1 0 20 14 M20 4v5.5h-5.5",
  left: "M4 6h3 M4 12h3 M4 18h3 M11 6h9 M11 12h9 M11 18h5",
  all: "M5 3h14v18l-3.5-2-3.5 2-3.5-2L5 21Z M9 8h6 M9 12.5h6",
  send: "M4 12h15 M13 6l6 6-6 6",
  ear: "M7 10a5 5 0 0 1 10 0c0 4-4 4.5-4 8a3 3 0 0 1-5.5 1.5 M10 10.5a2 2 0 0 1 4 0c0 1.5-1.5 1.5-2 3",
  earOff: "M7 10a5 5 0 0 1 10 0c0 4-4 4.5-4 8a3 3 0 0 1-5.5 1.5 M4 3l16 18",
  voice: "M4 9.5v5h3.5L12 19V5L7.5 9.5Z M15.5 9a4.2 4.2 0 0 1 0 6 M18 6.5a8 8 0 0 1 0 11",
  file: "M6 2.5h8l4.5 4.5v14.5H6Z M14 2.5V7h4.5 M12 11v6.5 M9.5 15l2.5 2.5 2.5-2.5",
  leave: "M10 4H5v16h5 M14 8l4 4-4 4 M18 12H9",
  play: "M7 4.5v15l12.5-7.5Z",
  picture: "M6 3v18 M6 7h8 M6 12h8 M6 17h8 M14 4.5h5v5h-5Z M14 14.5h5v5h-5Z",
  findings: "M12 3 22 20.5H2Z M12 10v4.5 M12 17.2v.3",
  sign: "M4 20h16 M5 16l1-4L15.5 2.5l3 3L9 15Z",
  settings: "M4 7h9 M17 7h3 M13 4.5v5 M4 16h3 M11 16h9 M9 13.5v5",
  phone: "M7 3h3l1.5 5L9 9.5a11 11 0 0 0 5.5 5.5l1.5-2.5 5 1.5v3c0 2-1.5 3-3 3C10 20 4 14 4 6c0-1.5 1-3 3-3Z",
  back: "M20 12H5 M11 6l-6 6 6 6",
  lesson: "M3 7l9-4 9 4-9 4Z M7 9.5v5.5c0 1.5 2.5 3 5 3s5-1.5 5-3V9.5 M21 7v6",
}

export const Icon = ({ name }: { name: IconName }) => (
  <svg className="icon" viewBox="0 0 24 24" aria-hidden="true">
    <path d={lines[name]} />
  </svg>
)
