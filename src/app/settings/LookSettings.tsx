/** Theme and text size. Both hold at once, so that the choice is seen where it is made. */
import { Choice } from "./Choice"
import { type Settings, textSizes } from "./Settings"
import type { SettingsKeeper } from "./SettingsKeeper"

const themes = [
  ["system", "As device"],
  ["light", "Light"],
  ["dark", "Dark"],
  ["contrast", "High contrast"],
] as const

export const LookSettings = ({ settings, keeper }: { settings: Settings; keeper: SettingsKeeper }) => (
  <section aria-labelledby="look-head">
    <h3 id="look-head">Look</h3>
    <Choice
      name="theme"
      legend="Theme"
      options={themes}
      chosen={settings.theme}
      choose={(theme) => keeper.change({ theme })}
    />
    <Choice
      name="text"
      legend="Text size"
      options={textSizes.map((size) => [size, `${size}\u00a0%`] as const)}
      chosen={settings.textPercent}
      choose={(textPercent) => keeper.change({ textPercent })}
    />
  </section>
)
