/**
 * How the supply provides its earth, as a small diagram: the upper line is the neutral, the lower one the earth. They
 * are one conductor that splits at the premises (TN-C-S), two all the way (TN-S), or the earth is a rod of the
 * premises' own (TT).
 */
import type { Arrangement } from "../../facts/Fact"

const neutral: Record<Arrangement, string> = { "TN-C-S": "M2 18h56", "TN-S": "M2 18h56", TT: "M2 18h56" }
const earth: Record<Arrangement, string> = {
  "TN-C-S": "M22 18v24h36",
  "TN-S": "M2 42h56",
  TT: "M58 42H30v8 M18 50h24 M22 56h16 M26 62h8",
}

export const SupplyGlyph = ({ arrangement }: { arrangement: Arrangement | null }) =>
  arrangement ? (
    <g>
      <path className="glyph-neutral" d={neutral[arrangement]} />
      <path className="glyph-earth-base" d={earth[arrangement]} />
      <path className="glyph-earth" d={earth[arrangement]} />
      {arrangement === "TN-C-S" && <circle className="glyph-joint" cx="22" cy="18" r="5" />}
      <text className="glyph-letter" x="50" y="11">
        N
      </text>
      <text className="glyph-letter" x="50" y="35">
        E
      </text>
    </g>
  ) : (
    <path className="glyph-unknown" d="M2 18h56 M2 42h56" />
  )
