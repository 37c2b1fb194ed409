/**
 * A protective conductor in its green and yellow, drawn thicker for a larger size. A conductor whose size is not known
 * yet is a thin broken line, so that a gap in the record is seen as a gap in the picture.
 */

/** Stroke width for a size in mm², in the picture's units. It tells sizes apart and is not to scale. */
export const strokeOf = (csaMm2: number): number => Math.min(14, 3 + Math.sqrt(csaMm2) * 1.35)

export const Conductor = ({ d, csaMm2 }: { d: string; csaMm2: number | null }) =>
  csaMm2 === null ? (
    <path className="wire-unknown" d={d} />
  ) : (
    <g>
      <path className="wire-green" d={d} strokeWidth={strokeOf(csaMm2)} />
      <path className="wire-yellow" d={d} strokeWidth={strokeOf(csaMm2)} />
    </g>
  )
