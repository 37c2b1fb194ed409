/** Puts theme and text size on the page's root, where `tokens.css` looks for them. */
import type { SettingsKeeper } from "./SettingsKeeper"

/** Now, and whenever they change. */
export const applyLook = (keeper: SettingsKeeper, root: HTMLElement): void => {
  const apply = () => {
    const { theme, textPercent } = keeper.snapshot()
    if (theme === "system") delete root.dataset.theme
    else root.dataset.theme = theme
    root.dataset.text = String(textPercent)
  }
  keeper.subscribe(apply)
  apply()
}
