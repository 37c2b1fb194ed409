/** Undoes what was learnt of a voice. It costs two minutes to learn it again, so it is not asked twice. */
import { Icon } from "../parts/Icon"
import type { SettingsKeeper } from "../settings/SettingsKeeper"
import { useSettings } from "../settings/useSettings"

export const ForgetVoice = ({ keeper }: { keeper: SettingsKeeper }) => {
  const { voiceFit } = useSettings(keeper)
  if (!voiceFit) return <p role="status">Your voice is forgotten.</p>
  return (
    <button type="button" onClick={() => keeper.change({ voiceFit: null })}>
      <Icon name="undo" />
      <span>Forget my voice</span>
    </button>
  )
}
