/** Plays the very stretch of sound that an utterance came from, where it was kept. */
import { useEffect, useRef, useState } from "react"
import { Icon } from "../../parts/Icon"

/** The sound of one utterance and no more, or null where none was kept. */
export type SoundOf = (heard: string) => Promise<Blob | null>

export const PlaySound = ({ heard, soundOf }: { heard: string; soundOf: SoundOf }) => {
  const [address, setAddress] = useState<string | null>(null)
  const player = useRef<HTMLAudioElement>(null)
  useEffect(() => {
    let made: string | null = null
    let left = false
    void soundOf(heard).then(
      (sound) => {
        if (!sound || left) return
        made = URL.createObjectURL(sound)
        setAddress(made)
      },
      () => setAddress(null),
    )
    return () => {
      left = true
      if (made) URL.revokeObjectURL(made)
      setAddress(null)
    }
  }, [heard, soundOf])
  if (!address) return <p className="quiet">No sound was kept of this.</p>
  return (
    <>
      {/* biome-ignore lint/a11y/useMediaCaption: the words stand right above it */}
      <audio ref={player} src={address} preload="auto" />
      <button type="button" className="play-sound" onClick={() => void player.current?.play()}>
        <Icon name="play" />
        <span>Play it</span>
      </button>
    </>
  )
}
