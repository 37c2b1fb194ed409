/** The words of the picture, each with its shape before it where it has one. */
import { markPath } from "../parts/Mark"
import { type Placed, textSizes } from "./flowText"
import type { TextKind } from "./layoutPicture"

const LeadShape = ({ one }: { one: Placed<TextKind> }) => {
  if (!one.lead) return null
  const top = one.y - textSizes[one.size] + 2
  if (one.kind.as === "state")
    return (
      <g className={`mark mark-${one.kind.shape}`} transform={`translate(${one.x} ${top}) scale(0.7)`}>
        <path d={markPath(one.kind.shape)} />
      </g>
    )
  return <path className="step-tick" d={`M${one.x + 1} ${top + 8}l4.5 5 8-10`} />
}

export const PictureTexts = ({ texts }: { texts: readonly Placed<TextKind>[] }) => (
  <>
    {texts.map((one) => (
      <g key={`${one.x} ${one.y}`}>
        <LeadShape one={one} />
        <text
          className={`words words-${one.kind.as}`}
          x={one.x + (one.lead ?? 0)}
          y={one.y}
          fontSize={textSizes[one.size]}
        >
          {one.text}
        </text>
      </g>
    ))}
  </>
)
