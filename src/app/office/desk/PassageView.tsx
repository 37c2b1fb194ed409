/** What was said around a value, in order: its sentences with the light on, what the app said back, and what came next. */
import type { Passage } from "../../../review/passage"
import type { SoundOf } from "./PlaySound"
import { type Light, Sentence } from "./Sentence"

interface PassageProps {
  passage: Passage
  light: Light | null
  soundOf: SoundOf
}

export const PassageView = ({ passage, light, soundOf }: PassageProps) => {
  const { said, saidBack, next } = passage
  if (said.length === 0 && saidBack.length === 0) return null
  return (
    <section className="passage" aria-labelledby="passage-head">
      <h3 id="passage-head">What was said</h3>
      <ol>
        {said.map((one) => (
          <li key={one.id} className="passage-worker">
            <Sentence said={one} light={light} soundOf={soundOf} />
          </li>
        ))}
        {saidBack.map((words, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: sentences may repeat, and never change places
          <li key={index} className="passage-app">
            <p>{words}</p>
            <p className="quiet">said back</p>
          </li>
        ))}
        {next?.heard && (
          <li className="passage-worker passage-next">
            <p>“{next.heard.text}”</p>
            <p className="quiet">what was said next</p>
          </li>
        )}
      </ol>
    </section>
  )
}
