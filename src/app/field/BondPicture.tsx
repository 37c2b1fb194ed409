/**
 * The main earthing terminal with its bonds, drawn live from the record. One end taken off shows as a gap at the bar,
 * a connection as a filled screw; the same is said in words under each line and in a list for screen readers.
 */
import { memo, useRef } from "react"
import type { DialogueState } from "../../dialogue/DialogueState"
import { Conductor } from "./Conductor"
import { type LaidLine, type LaidPicture, layoutPicture, places } from "./layoutPicture"
import { PartSymbol } from "./PartSymbol"
import { PictureTexts } from "./PictureTexts"
import { pictureOf } from "./pictureOf"
import { pictureWords } from "./pictureWords"
import { SupplyGlyph } from "./SupplyGlyph"
import { useTextWidth } from "./useTextWidth"

const Screw = ({ y, tight }: { y: number; tight: boolean }) => (
  <g transform={`translate(${places.barX} ${y})`}>
    <circle className={tight ? "screw screw-tight" : "screw"} r="8" />
    {tight && <path className="screw-slot" d="M-4-4l8 8M4-4l-8 8" />}
  </g>
)

const Bond = ({ laid, width }: { laid: LaidLine; width: number }) => {
  const { line, y } = laid
  // Steps stand in the order they were done: an end that was taken off and put back again is on.
  const off = line.steps.lastIndexOf("one_end_disconnected") > line.steps.lastIndexOf("connected_to_met")
  const end = width - places.edge - places.partSize
  const start = off ? places.barX + 34 : places.barX
  return (
    <g>
      <Conductor d={`M${start} ${y}H${end}`} csaMm2={line.csaMm2} />
      {off && <path className="wire-off" d={`M${start} ${y}l-14-14`} />}
      <Screw y={y} tight={line.steps.includes("connected_to_met") && !off} />
      <PartSymbol item={line.item} steps={line.steps} x={end} y={y} />
      <PictureTexts texts={laid.texts} />
    </g>
  )
}

const Terminal = ({ laid }: { laid: LaidPicture }) => (
  <g>
    <rect
      className="bar"
      x={places.barX - 12}
      y={laid.bar.from}
      width="24"
      height={laid.bar.to - laid.bar.from}
      rx="5"
    />
    <PictureTexts texts={laid.bar.texts} />
    <circle className="screw screw-spare" cx={places.barX} cy={laid.spare.y} r="8" />
    <PictureTexts texts={laid.spare.texts} />
  </g>
)

/** The whole picture, with its words as a hidden list. Left alone while only the sound level changes. */
export const BondPicture = memo(({ dialogue }: { dialogue: DialogueState }) => {
  const frame = useRef<HTMLDivElement>(null)
  const width = useTextWidth(frame)
  const picture = pictureOf(dialogue)
  const laid = layoutPicture(picture, width)
  return (
    <div className="picture" ref={frame}>
      <svg
        className="picture-drawing"
        viewBox={`0 0 ${laid.width} ${laid.height}`}
        role="img"
        aria-label="The main earthing terminal with its bonds. The list after it says the same in words."
      >
        <rect className="supply-box" x="1" y="1" width={laid.width - 2} height={laid.supply.height - 2} rx="10" />
        <Conductor
          d={`M${places.barX} ${laid.conductor.from}V${laid.conductor.to + 10}`}
          csaMm2={picture.conductor.csaMm2}
        />
        <g transform={`translate(16 ${laid.supply.glyphY})`}>
          <SupplyGlyph arrangement={picture.arrangement} />
        </g>
        <PictureTexts texts={laid.supply.texts} />
        <PictureTexts texts={laid.conductor.texts} />
        <Terminal laid={laid} />
        {laid.bonds.map((bond) => (
          <Bond key={bond.line.item} laid={bond} width={laid.width} />
        ))}
      </svg>
      <ul className="unseen">
        {pictureWords(picture).map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
    </div>
  )
})
