/** How the app speaks. The first three can be said as well: "short answers", "louder", "slower". */
import type { Verbosity } from "../../dialogue/Preferences"
import { Icon } from "../parts/Icon"
import { Choice } from "./Choice"
import { reWarnSeconds, type Settings } from "./Settings"
import type { SettingsKeeper } from "./SettingsKeeper"
import { Steps } from "./Steps"
import { Switch } from "./Switch"

const verbosities = [
  ["full", "Everything"],
  ["short", "Short"],
  ["warnings", "Only warnings"],
] as const

const meaning: Record<Verbosity, string> = {
  full: "Every value and every step is read back.",
  short: "Routine steps are a sound, routine values the fewest words.",
  warnings: "Routine facts are a sound. Readings, doubts and warnings are still said whole.",
}

interface VoiceProps {
  settings: Settings
  keeper: SettingsKeeper
  /** Speaks a sentence as it would sound now. */
  tryIt: (words: string) => void
}

export const VoiceSection = ({ settings, keeper, tryIt }: VoiceProps) => (
  <section aria-labelledby="voice-head">
    <h3 id="voice-head">Voice</h3>
    <Choice
      name="verbosity"
      legend="What is read back"
      options={verbosities}
      chosen={settings.verbosity}
      choose={(verbosity) => keeper.change({ verbosity })}
    />
    <p className="quiet">{meaning[settings.verbosity]}</p>
    <Steps
      legend="Loudness"
      less="Quieter"
      more="Louder"
      step={settings.volumeStep}
      set={(volumeStep) => keeper.change({ volumeStep })}
    />
    <Steps
      legend="Pace"
      less="Slower"
      more="Faster"
      step={settings.rateStep}
      set={(rateStep) => keeper.change({ rateStep })}
    />
    <button type="button" onClick={() => tryIt("Water. Ten square.")}>
      <Icon name="voice" />
      <span>Hear how it sounds</span>
    </button>
    <Switch words="Loud cupboard" on={settings.soundFirst} set={(soundFirst) => keeper.change({ soundFirst })}>
      A short sound first, then the words, at full volume.
    </Switch>
    <Choice
      name="rewarn"
      legend="Say an unanswered warning again after"
      options={reWarnSeconds.map((seconds) => [seconds, `${seconds} s`] as const)}
      chosen={settings.reWarnSeconds}
      choose={(seconds) => keeper.change({ reWarnSeconds: seconds })}
    />
    <Switch
      words="Voices that need the network"
      on={settings.remoteVoices}
      set={(remoteVoices) => keeper.change({ remoteVoices })}
    >
      The words that are spoken then go to the maker of that voice. Off, nothing leaves this device.
    </Switch>
  </section>
)
