/**
 * Plays the sound that an utterance came from, where it was kept: the very words that the value rests on, or all of it.
 * Where none was kept nothing is shown, as that is how most sentences are.
 */
import { useEffect, useRef, useState } from "react"
import type { SoundStretch } from "../../../review/litStretch"
import { Icon } from "../../parts/Icon"
import type { KeptSound } from "../Desk"
import { playStretch } from "./playStretch"

/** The sound of one utterance and no more, or null where none was kept. */
export type SoundOf = (heard: string) => Promise<KeptSound | null>

interface PlayProps {
  heard: string
  soundOf: SoundOf
  /** Where the lit words lie in it. */
  stretch: SoundStretch | null
  /** When words of it were struck last: the sound is another after that. */
  struckAt: string | null
}

const useKept = ({ heard, soundOf, struckAt }: Omit<PlayProps, "stretch">): KeptSound | null => {
  const [kept, setKept] = useState<KeptSound | null>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was struck is read again
  useEffect(() => {
    let left = false
    soundOf(heard).then(
      (found) => !left && setKept(found),
      () => !left && setKept(null),
    )
    return () => {
      left = true
    }
  }, [heard, soundOf, struckAt])
  return kept
}

/** One sound at a time: another button, or the same again, stops what is being played. */
const usePlayer = () => {
  const playing = useRef<AbortController | null>(null)
  const [failed, setFailed] = useState(false)
  useEffect(() => () => playing.current?.abort(), [])
  const play = async (kept: KeptSound, stretch: SoundStretch | null) => {
    playing.current?.abort()
    const stop = new AbortController()
    playing.current = stop
    await playStretch(kept, stretch, stop.signal).then(
      () => setFailed(false),
      () => setFailed(true),
    )
  }
  return { failed, play }
}

export const PlaySound = (props: PlayProps) => {
  const kept = useKept(props)
  const { failed, play } = usePlayer()
  const { stretch } = props
  if (!kept) return null
  return (
    <div className="play-ways">
      {stretch && (
        <button type="button" className="small-button play-sound" onClick={() => void play(kept, stretch)}>
          <Icon name="play" />
          <span>Play the lit words</span>
        </button>
      )}
      <button type="button" className="small-button play-sound" onClick={() => void play(kept, null)}>
        <Icon name="play" />
        <span>Play the sentence</span>
      </button>
      {kept.isSilenced && <p className="quiet">A stretch of this sound was silenced for good.</p>}
      {failed && <p role="alert">This browser could not play it.</p>}
    </div>
  )
}
