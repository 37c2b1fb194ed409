/** What the ear is doing: a shape, a word and the level of the sound. No two states share a shape or a word. */
import type { EarState as Engine } from "../../speech/Listener"
import type { SessionView } from "../Session"

/** `paused`: the ear runs, but by the worker's word it waits for "start listening" and takes nothing else. */
type State = Engine | "paused"

const shown: Record<State, { words: string; path: string }> = {
  starting: { words: "Getting ready", path: "M4 12h.01 M12 4v.01 M20 12h.01 M12 20v.01" },
  listening: { words: "Listening", path: "M12 3a9 9 0 1 0 .01 0Z M12 10.5v3" },
  speech: { words: "Hearing you", path: "M3 10v4 M7.5 6v12 M12 3v18 M16.5 6v12 M21 10v4" },
  deaf: { words: "Talking, so not listening", path: "M3 9.5v5h4L12 19V5L7 9.5Z M16 9.5l5 5 M21 9.5l-5 5" },
  paused: { words: "Paused. Say “start listening”", path: "M8 4v16 M16 4v16" },
  stopped: { words: "Not listening", path: "M5 5h14v14H5Z" },
}

const steps = 10

/** What the ear does as the worker sees it. */
export const earStateOf = ({ ear, dialogue }: SessionView): State =>
  dialogue.listening || ear.state === "stopped" || ear.state === "deaf" ? ear.state : "paused"

export const EarState = ({ view }: { view: SessionView }) => {
  const { ear } = view
  const state = earStateOf(view)
  const { words, path } = shown[state]
  const lit = Math.round(Math.min(1, Math.max(0, ear.level)) * steps)
  return (
    <div className={`ear ear-${state}`}>
      <svg className="ear-shape" viewBox="0 0 24 24" aria-hidden="true">
        <path d={path} />
      </svg>
      <span className="ear-words">{words}</span>
      <svg className="ear-level" viewBox="0 0 100 24" preserveAspectRatio="none" aria-hidden="true">
        {Array.from({ length: steps }, (_, index) => index).map((index) => (
          <rect
            key={index}
            className={index < lit ? "lit" : "unlit"}
            x={index * 10 + 1}
            y={18 - index * 1.8}
            width="7"
            height={6 + index * 1.8}
          />
        ))}
      </svg>
    </div>
  )
}
