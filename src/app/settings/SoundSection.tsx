/** Whether the sound of what was said is kept, for how long, how much there is, and the way to be rid of it all. */
import { useCallback, useEffect, useState } from "react"
import { showBytes } from "../parts/showBytes"
import type { SoundShelf, SoundSum } from "../sound/SoundShelf"
import { Choice } from "./Choice"
import type { Settings } from "./Settings"
import type { SettingsKeeper } from "./SettingsKeeper"
import { Switch } from "./Switch"

const times = [
  ["signed", "Signed off"],
  ["30", "30 days"],
  ["90", "90 days"],
  ["deleted", "I delete it"],
] as const

const showSum = ({ clips, bytes }: SoundSum) =>
  clips === 0 ? "none" : `${clips} ${clips === 1 ? "sentence" : "sentences"}, ${showBytes(bytes)}`

const useSum = (sound: SoundShelf) => {
  const [sum, setSum] = useState<SoundSum | null>(null)
  const look = useCallback(() => {
    sound.sum().then(setSum, () => setSum(null))
  }, [sound])
  useEffect(look, [look])
  return { sum, look }
}

/** Asked twice: what is deleted here cannot be had back. */
const DeleteAll = ({ sound, sum, look }: { sound: SoundShelf; sum: SoundSum; look: () => void }) => {
  const [asked, setAsked] = useState(false)
  const [told, setTold] = useState("")
  const clear = async () => {
    const cleared = await sound.clear()
    setTold(cleared.ok ? "All kept sound is deleted." : cleared.because)
    setAsked(false)
    look()
  }
  return (
    <>
      {asked ? (
        <div className="way-row">
          <button type="button" onClick={() => void clear()}>
            Yes, delete the sound
          </button>
          <button type="button" onClick={() => setAsked(false)}>
            No, keep it
          </button>
        </div>
      ) : (
        sum.clips > 0 && (
          <button type="button" onClick={() => setAsked(true)}>
            Delete all sound now
          </button>
        )
      )}
      <p role="status">{told}</p>
    </>
  )
}

interface SoundProps {
  settings: Settings
  keeper: SettingsKeeper
  sound: SoundShelf
}

export const SoundSection = ({ settings, keeper, sound }: SoundProps) => {
  const { sum, look } = useSum(sound)
  const { keepSound, keepSoundFor } = settings
  return (
    <section aria-labelledby="sound-head">
      <h3 id="sound-head">Sound</h3>
      <Switch
        words="Keep the sound of what goes on record"
        on={keepSound}
        set={(on) => keeper.change({ keepSound: on })}
      >
        The few seconds of each sentence that becomes part of a job stay on this device only, so that the office can
        play them beside the words. Other talk is never kept. Sound is in no job file and no report. Tell those who work
        with you.
      </Switch>
      {(keepSound || (sum !== null && sum.clips > 0)) && (
        <>
          <Choice
            name="keep-sound"
            legend="Keep it until"
            options={times}
            chosen={keepSoundFor}
            choose={(chosen) => keeper.change({ keepSoundFor: chosen })}
          />
          <p className="quiet">
            What is past its time is deleted whenever the app is opened. When the device is full, sound goes first.
          </p>
        </>
      )}
      <dl className="facts">
        <dt>Sound kept</dt>
        <dd>{sum === null ? "not known" : showSum(sum)}</dd>
      </dl>
      {sum && <DeleteAll sound={sound} sum={sum} look={look} />}
    </section>
  )
}
