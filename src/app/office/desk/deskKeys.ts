/**
 * The keys of the desk. They are left alone while a field or a list of choices has the focus, while a dialog is open, and
 * while a modifier is held, so that nothing typed is ever taken for a command.
 */
import { useEffect } from "react"

/** What a key does, for the handler and for the list on the screen. */
export const deskKeys = [
  { keys: ["j", "ArrowDown"], shown: "J or ↓", act: "next", does: "next in the list" },
  { keys: ["k", "ArrowUp"], shown: "K or ↑", act: "previous", does: "the one before" },
  { keys: ["Home"], shown: "Home", act: "first", does: "first in the list" },
  { keys: [], shown: "Enter", act: "open", does: "open it" },
  { keys: ["e"], shown: "E", act: "value", does: "type a new value" },
  { keys: ["t"], shown: "T", act: "sentence", does: "type the sentence again" },
  { keys: ["y"], shown: "Y", act: "accept", does: "say yes to what waits" },
  { keys: ["b"], shown: "B", act: "keep", does: "keep a warning, because …" },
  { keys: ["u"], shown: "U", act: "withdraw", does: "take a value back" },
  { keys: ["x"], shown: "X", act: "strike", does: "strike private words" },
  { keys: ["p"], shown: "P", act: "play", does: "play the words, where their sound was kept" },
  { keys: ["s"], shown: "S", act: "sign", does: "sign" },
  { keys: ["d"], shown: "D", act: "files", does: "files to save or share" },
  { keys: ["?"], shown: "?", act: "keys", does: "this list" },
  { keys: ["Escape"], shown: "Esc", act: "back", does: "back one step" },
] as const
export type DeskAct = (typeof deskKeys)[number]["act"]

const isField = (target: EventTarget | null) =>
  target instanceof Element && target.closest("input, textarea, select, audio, [contenteditable], dialog") !== null

const actOf = (key: string): DeskAct | undefined =>
  deskKeys.find((one) => (one.keys as readonly string[]).includes(key.length === 1 ? key.toLowerCase() : key))?.act

/** Escape reaches `act` from fields as well, since it is how one leaves them; all others do not. */
export const useDeskKeys = (act: (act: DeskAct) => boolean): void => {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.altKey || event.metaKey || event.defaultPrevented) return
      if (document.querySelector("dialog[open]")) return
      if (isField(event.target) && event.key !== "Escape") return
      const wanted = actOf(event.key)
      if (wanted && act(wanted)) event.preventDefault()
    }
    window.addEventListener("keydown", press)
    return () => window.removeEventListener("keydown", press)
  }, [act])
}
