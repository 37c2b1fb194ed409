/** The one taking in of a store. It goes on while other screens of the office are open. */
import type { Store } from "../../../record/Store"
import { playsOpus } from "../../../speech/encodeClip"
import type { Desk } from "../Desk"
import { decodeSound } from "./decodeSound"
import { TakeIn } from "./TakeIn"

const known = new WeakMap<Store, TakeIn>()

/** `added` is called whenever jobs have come in. */
export const takeInOf = ({ store, sound }: Desk, added: () => void): TakeIn => {
  const made = known.get(store)
  if (made) return made
  const fresh = new TakeIn({
    makeTaker: () => new Worker(new URL("./takeInWorker.ts", import.meta.url), { type: "module" }),
    decode: decodeSound,
    ear: new URL("./ear/", document.baseURI).href,
    keep: () => ({ sound: sound.isOn(), opus: playsOpus() }),
    added,
    dropped: (clips) => sound.dropped.add(clips),
  })
  known.set(store, fresh)
  return fresh
}
