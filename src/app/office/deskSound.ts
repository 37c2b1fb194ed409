/**
 * Kept sound at the desk: handed out to be played, and silenced where private words are struck. Silencing decodes the clip,
 * wipes the stretch and makes the clip anew; a clip that cannot be decoded goes whole, as private words must not stay.
 */
import { done, type Outcome } from "../../facts/Outcome"
import type { Clip, ClipStore } from "../../record/Clip"
import { type EncodedClip, encodeClip, oggOpus } from "../../speech/encodeClip"
import type { Sound } from "../../speech/readWav"
import type { DeskSound } from "./Desk"
import { decodeSound } from "./takeIn/decodeSound"
import { wipeStretch } from "./wipeStretch"

/** The work on sound that a browser does, so that tests can stand in for it. */
export interface SoundTools {
  decode(sound: Blob): Promise<Outcome<Sound>>
  encode(sound: Sound, type: string): Promise<EncodedClip>
}

const browserTools: SoundTools = {
  decode: decodeSound,
  encode: ({ samples, rateHz }, type) => encodeClip(samples, rateHz, type === oggOpus),
}

const blobOf = ({ sound, type }: Clip) => new Blob([sound as Uint8Array<ArrayBuffer>], { type })

export const createDeskSound = (
  clips: ClipStore,
  tools: SoundTools = browserTools,
): Pick<DeskSound, "of" | "silence"> => ({
  of: async (key) => {
    const clip = await clips.read(key)
    return clip && { blob: blobOf(clip), from: clip.from, isSilenced: clip.silenced.length > 0 }
  },
  silence: async (key, start, end) => {
    const clip = await clips.read(key)
    if (!clip) return done(undefined)
    const sound = await tools.decode(blobOf(clip))
    if (!sound.ok) return clips.drop([key])
    const { samples, rateHz } = sound.value
    const wiped = wipeStretch(samples, rateHz, { start: start - clip.from, end: end - clip.from })
    const { type, bytes } = await tools.encode({ samples: wiped, rateHz }, clip.type)
    const silenced = [...clip.silenced, { start, end }]
    return clips.put({ ...clip, type, bytes: bytes.length, silenced, sound: bytes })
  },
})
