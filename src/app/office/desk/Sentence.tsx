/** One utterance with the words lit that a value rests on, what the ear was in doubt of, and its sound where it was kept. */
import { useEffect, useState } from "react"
import type { RecordedFact } from "../../../facts/Fact"
import { sureMargin } from "../../../facts/Heard"
import type { Item } from "../../../facts/Item"
import { type Interpret, lightUp, type Span } from "../../../review/lightUp"
import { litStretch } from "../../../review/litStretch"
import type { Said } from "../../../review/passage"
import { showClock } from "../../parts/showMoment"
import { PlaySound, type SoundOf } from "./PlaySound"

export interface Light {
  fact: RecordedFact
  item: Item | null
  interpret: Interpret
}

const ears: Partial<Record<string, string>> = {
  typed: "typed",
  transcript: "from a transcript",
  browser: "the browser’s ear",
  offline: "the offline ear",
}

/** Reading a sentence again costs some milliseconds a word, so the plain text is drawn first. */
const useSpans = ({ heard }: Said, light: Light | null): Span[] => {
  const plain = heard ? [{ text: heard.text, lit: false }] : []
  const [spans, setSpans] = useState<Span[] | null>(null)
  useEffect(() => {
    setSpans(null)
    if (!heard || !light) return
    const timer = setTimeout(() => setSpans(lightUp(heard, light.fact, light.item, light.interpret)), 30)
    return () => clearTimeout(timer)
  }, [heard, light])
  return spans ?? plain
}

const Doubt = ({ heard }: { heard: NonNullable<Said["heard"]> }) => {
  const { margin, alternatives } = heard
  if (margin === null && alternatives.length === 0) return null
  return (
    <dl className="doubt">
      {margin !== null && (
        <div>
          <dt>Margin</dt>
          <dd className={margin < sureMargin ? "in-doubt" : ""}>
            {margin.toFixed(2)} {margin < sureMargin ? "the ear was in doubt" : "plain"}
          </dd>
        </div>
      )}
      {alternatives.length > 0 && (
        <div>
          <dt>Or</dt>
          <dd>{alternatives.map((one) => `“${one}”`).join(", ")}</dd>
        </div>
      )}
    </dl>
  )
}

interface SentenceProps {
  said: Said
  light: Light | null
  soundOf: SoundOf
}

export const Sentence = ({ said, light, soundOf }: SentenceProps) => {
  const spans = useSpans(said, light)
  const { heard, at, struck } = said
  if (!heard) return <p className="sentence-lost">A sentence that the log does not hold any more.</p>
  return (
    <div className="sentence-said">
      <blockquote>
        {spans.map((span, index) =>
          span.lit ? (
            // biome-ignore lint/suspicious/noArrayIndexKey: the pieces of one text never change places
            <mark key={index}>{span.text}</mark>
          ) : (
            // biome-ignore lint/suspicious/noArrayIndexKey: the pieces of one text never change places
            <span key={index}>{span.text}</span>
          ),
        )}
      </blockquote>
      <p className="quiet">
        {ears[heard.engine] ?? "heard"}
        {at && `, ${showClock(at)}`}
        {struck && `; words were struck: ${struck.because}`}
      </p>
      <Doubt heard={heard} />
      <PlaySound heard={heard.id} soundOf={soundOf} stretch={litStretch(heard, spans)} struckAt={struck?.at ?? null} />
    </div>
  )
}
