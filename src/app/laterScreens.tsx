/**
 * Screens that come after the start page, as what shows a job knows the trade. Once one is here it is drawn at once;
 * until then, the opening screen stands in.
 */
import { type ComponentType, useEffect, useReducer } from "react"
import { Opening } from "./Opening"
import type { Session, SessionView } from "./Session"

interface ScreenProps {
  view: SessionView
  session: Session
}

interface Later {
  /** Null while it is not here. */
  Screen: ComponentType<ScreenProps> | null
  failed: boolean
  /** Resolves once the screen is here, or could not be had. */
  fetch(): Promise<void>
}

const later = (load: () => Promise<ComponentType<ScreenProps>>): Later => {
  const one: Later = {
    Screen: null,
    failed: false,
    fetch: async () => {
      try {
        one.Screen ??= await load()
      } catch {
        one.failed = true
      }
    },
  }
  return one
}

export const laterScreens = {
  job: later(async () => (await import("./field/JobView")).JobView),
  lesson: later(async () => (await import("./lesson/LessonView")).LessonView),
  learn: later(async () => (await import("./learn/LearnView")).LearnView),
  settings: later(async () => (await import("./settings/SettingsPage")).SettingsPage),
}

export const LaterScreen = ({ name, ...props }: ScreenProps & { name: keyof typeof laterScreens }) => {
  const screen = laterScreens[name]
  const [, draw] = useReducer((count: number) => count + 1, 0)
  useEffect(() => {
    if (!screen.Screen) void screen.fetch().then(draw)
  }, [screen])
  return screen.Screen ? <screen.Screen {...props} /> : <Opening failed={screen.failed} />
}
