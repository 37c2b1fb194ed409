/** Everything the worker can set on this device, what it stores, and the edition that is followed. */
import { followedPack } from "../followedPack"
import { VoiceFitSection } from "../learn/VoiceFitSection"
import { Icon } from "../parts/Icon"
import type { Session, SessionView } from "../Session"
import { AloneSection } from "./AloneSection"
import { BackupSection } from "./BackupSection"
import { EarSection } from "./EarSection"
import { LookSettings } from "./LookSettings"
import { SoundSection } from "./SoundSection"
import { StorageSection } from "./StorageSection"
import { Switch } from "./Switch"
import { useSettings } from "./useSettings"
import { VoiceSection } from "./VoiceSection"

const Edition = () => (
  <section aria-labelledby="edition-head">
    <h3 id="edition-head">Edition followed</h3>
    <p>
      <strong>{followedPack.edition}</strong> ({followedPack.title})
    </p>
    <p className="quiet">{followedPack.newer}</p>
  </section>
)

export const SettingsView = ({ view, session }: { view: SessionView; session: Session }) => {
  const keeper = session.settings
  const settings = useSettings(keeper)
  return (
    <div className="settings">
      <h2>Settings</h2>
      <LookSettings settings={settings} keeper={keeper} />
      <VoiceSection settings={settings} keeper={keeper} tryIt={(words) => session.prompt(words)} />
      <section aria-labelledby="listen-head">
        <h3 id="listen-head">Listening</h3>
        <EarSection settings={settings} keeper={keeper} />
        <Switch
          words="I wear a headset: I may interrupt"
          on={settings.headset}
          set={(headset) => keeper.change({ headset })}
        >
          The app listens while it talks, and stops when you speak. Whatever you say then waits for your yes. Leave it
          off where others hear the app from a loudspeaker.
        </Switch>
        <Switch
          words="Keep the screen on while listening"
          on={settings.keepAwake}
          set={(keepAwake) => keeper.change({ keepAwake })}
        >
          A phone that locks its screen stops listening.
        </Switch>
        {view.phase === "start" && (
          <a className="button" href="#lesson">
            <Icon name="lesson" />
            <span>Microphone check and first lesson</span>
          </a>
        )}
      </section>
      <VoiceFitSection keeper={keeper} mayLearn={view.phase === "start"} />
      <SoundSection settings={settings} keeper={keeper} sound={session.sound} />
      <AloneSection settings={settings} view={view} session={session} />
      <BackupSection view={view} session={session} />
      <StorageSection view={view} session={session} />
      <Edition />
    </div>
  )
}
