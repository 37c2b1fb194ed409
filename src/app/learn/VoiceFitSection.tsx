/** In the settings: the way to have one's voice learnt, what was learnt, and the way to have it forgotten. */
import { Icon } from "../parts/Icon"
import type { SettingsKeeper } from "../settings/SettingsKeeper"
import { useSettings } from "../settings/useSettings"
import { ForgetVoice } from "./ForgetVoice"
import { voiceWords } from "./voiceWords"

interface SectionProps {
  keeper: SettingsKeeper
  /** The microphone is the job's while one is open. */
  mayLearn: boolean
}

export const VoiceFitSection = ({ keeper, mayLearn }: SectionProps) => {
  const { voiceFit } = useSettings(keeper)
  return (
    <section aria-labelledby="voice-fit-head">
      <h3 id="voice-fit-head">Your voice</h3>
      <p>
        Read twenty sentences, and the offline ear learns how your voice differs from most. What it learns stays on this
        device, and no sound is kept.
      </p>
      {voiceFit && <p>{voiceWords(voiceFit)}</p>}
      <div className="way-row">
        {mayLearn && (
          <a className="button" href="#learn">
            <Icon name="ear" />
            <span>{voiceFit ? "Learn it again" : "Learn my voice"}</span>
          </a>
        )}
        {voiceFit && <ForgetVoice keeper={keeper} />}
      </div>
      {!mayLearn && <p className="quiet">It can be learnt while no job is open.</p>}
    </section>
  )
}
