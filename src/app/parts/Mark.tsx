/**
 * Small shapes that tell states apart without colour. Each state has an outline of its own; the word beside it is the
 * caller's, so a mark alone is always hidden from screen readers.
 */

/** Every state that the screen marks. */
export type Shape =
  | "note"
  | "stop"
  | "warn"
  | "awaiting"
  | "fresh"
  | "yes"
  | "unchallenged"
  | "hand"
  | "gone"
  | "kept"
  | "bare"

const outlines: Record<Shape, string> = {
  stop: "M7 1.5h10l5.5 5.5v10L17 22.5H7L1.5 17V7Z M12 6v7.5 M12 17v.8",
  warn: "M12 2 23 21.5H1Z M12 9v6 M12 18v.6",
  awaiting: "M5 2h14 M5 22h14 M6.5 2c0 6 4 7 5.5 10 1.5-3 5.5-4 5.5-10 M6.5 22c0-6 4-7 5.5-10 1.5 3 5.5 4 5.5 10",
  fresh: "M12 3a9 9 0 1 0 .01 0Z M12 11.5v1",
  yes: "M12 2a10 10 0 1 0 .01 0Z M7 12.5l3.5 3.5L17 8.5",
  unchallenged: "M12 2a10 10 0 1 0 .01 0Z M7 12h10",
  hand: "M3 21l1-5L16.5 3.5l4 4L8 20Z M14 6l4 4",
  gone: "M4 4l16 16 M20 4L4 20",
  kept: "M5 2h14v20l-7-5-7 5Z",
  note: "M5 3h14v18H5Z M9 8.5h6 M9 12.5h6 M9 16.5h3",
  bare: "M12 3a9 9 0 1 0 .01 0Z",
}

/** The path of a shape on a 24 by 24 field, for pictures that place it themselves. */
export const markPath = (shape: Shape): string => outlines[shape]

/** A shape the height of the text beside it. */
export const Mark = ({ shape }: { shape: Shape }) => (
  <svg className={`mark mark-${shape}`} viewBox="0 0 24 24" aria-hidden="true">
    <path d={outlines[shape]} />
  </svg>
)

/** A shape and its word: how every state is shown. */
export const State = ({ shape, words }: { shape: Shape; words: string }) => (
  <span className={`state state-${shape}`}>
    <Mark shape={shape} />
    <span>{words}</span>
  </span>
)
